import { JSON_LINES } from "../../threads/streamed";

/**
 * Lines of JSON as they are worked out, one a line. Between two lines whoever else waits is served first, and when the reader goes away the next is not
 * worked out.
 */
export function streamedLines(lines: Iterator<unknown>): Response {
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    async pull(controller) {
      await new Promise((next) => setImmediate(next));
      const { done, value } = lines.next();
      if (done) controller.close();
      else controller.enqueue(encoder.encode(`${JSON.stringify(value)}\n`));
    },
    cancel: () => void lines.return?.(),
  });
  return new Response(body, { headers: JSON_LINES });
}
