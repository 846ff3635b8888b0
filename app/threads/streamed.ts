import type { Told, Work } from "./asked-once";
import { forgetWork, stoppableBy } from "./stoppable";

/** A line of the stream. The number to stop by comes first, then progress, then the answer or why there is none. */
export type StreamLine<Progress, Answer> =
  | { readonly workId: number }
  | { readonly progress: Progress }
  | { readonly answer: Answer }
  | { readonly problem: string };

/** "no-transform" keeps the lines from being held back to be compressed. */
export const JSON_LINES = { "content-type": "application/x-ndjson", "cache-control": "no-store, no-transform" };

/**
 * Work as a response of JSON lines (one a line, as they come). When the reader goes away the work is stopped.
 * @param start  begins the work; it is given what to call with its progress
 */
export function streamed(start: (told: Told) => Work): Response {
  const encoder = new TextEncoder();
  let isRead = true;
  let stop = () => {};
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      const say = (line: StreamLine<unknown, unknown>) => {
        if (isRead) controller.enqueue(encoder.encode(`${JSON.stringify(line)}\n`));
      };
      const work = start((progress) => say({ progress }));
      stop = work.stop;
      const workId = stoppableBy(work.stop);
      say({ workId });
      work.answer
        .then(
          (answer) => say({ answer }),
          (error: unknown) => say({ problem: error instanceof Error ? error.message : String(error) }),
        )
        .finally(() => {
          forgetWork(workId);
          if (isRead) controller.close();
        });
    },
    cancel() {
      isRead = false;
      stop();
    },
  });
  return new Response(body, { headers: JSON_LINES });
}
