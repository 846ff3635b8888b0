"use client";

/** A response of JSON lines, one after the other as they come. */
export async function* jsonLines<Line>(response: Response): AsyncGenerator<Line> {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  while (reader) {
    const { done, value } = await reader.read();
    const lines = (rest + (value ?? (done ? "\n" : ""))).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) if (line.trim()) yield JSON.parse(line);
    if (done) return;
  }
}
