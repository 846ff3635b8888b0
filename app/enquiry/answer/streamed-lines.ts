import { setTimeout as after } from "node:timers/promises";
import { JSON_LINES } from "../../threads/streamed";

/**
 * How long nothing is worked out after the first line, in milliseconds: about the time between two keys of somebody who types. The question after the next
 * key then meets a server that has nothing to finish first.
 */
const NEXT_KEY_MS = 120;

/**
 * Lines of JSON as they are worked out, one a line, the first at once. Between two lines whoever else waits is served first, and when the reader goes
 * away the next is not worked out.
 */
export function streamedLines(lines: Iterator<unknown>): Response {
  const encoder = new TextEncoder();
  const leaving = new AbortController();
  let lineCount = 0;
  const body = new ReadableStream<Uint8Array>({
    async pull(controller) {
      if (lineCount++ === 1) await after(NEXT_KEY_MS, null, { signal: leaving.signal }).catch(() => null);
      else await new Promise((next) => setImmediate(next));
      if (leaving.signal.aborted) return;
      const { done, value } = lines.next();
      if (done) controller.close();
      else controller.enqueue(encoder.encode(`${JSON.stringify(value)}\n`));
    },
    cancel() {
      leaving.abort();
      lines.return?.();
    },
  });
  return new Response(body, { headers: JSON_LINES });
}
