import type { IncomingMessage, ServerResponse } from "node:http";

/** Turns of the server's loop in which nobody new has come in, after which no more are waited for. New connections are let in one a turn. */
const QUIET_TURNS = 2;
/** Nobody waits longer for others than this, in milliseconds. */
const LONGEST_MS = 40;

/** Whoever has knocked already is let in before work is begun that keeps all others out. */
export type AllIn = {
  readonly note: (request: IncomingMessage, response: ServerResponse) => void;
  /** Over when nobody new has come for a moment and what was sent to be written is written. */
  readonly allIn: () => Promise<void>;
};

/**
 * Rendering holds the server's one thread: those who knock meanwhile come in one at a time, and where twenty write and fifty read, each would find the farm
 * changed and have the page rendered once more. Let in together, all are answered by one rendering.
 */
export function allIn(longestMs = LONGEST_MS): AllIn {
  let comeCount = 0;
  let writingCount = 0;
  return {
    note: ({ method }, response) => {
      comeCount++;
      if (method === "GET" || method === "HEAD") return;
      writingCount++;
      response.once("close", () => writingCount--);
    },
    allIn: async () => {
      const end = performance.now() + longestMs;
      for (let quietTurns = 0; quietTurns < QUIET_TURNS && performance.now() < end; ) {
        const before = comeCount;
        await new Promise((resolve) => setImmediate(resolve));
        quietTurns = comeCount === before && writingCount === 0 ? quietTurns + 1 : 0;
      }
    },
  };
}
