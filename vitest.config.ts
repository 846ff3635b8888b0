import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** How long a test, or what makes it ready, may take: an end for what hangs. A machine that is busy with other things is slow, and no fault. */
const PATIENCE_MS = 600_000;

/** How long a test asks again for what is to come. */
const POLL_MS = 120_000;

/** Files that a run leaves out, a line each: those that tests/run.mjs runs by themselves. */
const LEFT_OUT = process.env.LEFT_OUT?.split("\n").filter(Boolean) ?? [];

/** Two projects: everything that runs in Node, and what a real browser must show of the built app. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**", ...LEFT_OUT],
          testTimeout: PATIENCE_MS,
          hookTimeout: PATIENCE_MS,
          expect: { poll: { timeout: POLL_MS } },
          // Left to itself, vitest leaves a core free: on two cores that is half of them.
          maxWorkers: Math.max(2, availableParallelism()),
        },
      },
      {
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/serve.ts"],
          testTimeout: PATIENCE_MS,
          hookTimeout: PATIENCE_MS,
          expect: { poll: { timeout: POLL_MS } },
          // Files in two lanes, each with a server and a farm of its own (tests/browser/serve.ts).
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
