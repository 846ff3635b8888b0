import { setPriority } from "node:os";
import { setImmediate as nextTurn } from "node:timers/promises";
import { parentPort } from "node:worker_threads";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import type { JobKind } from "./jobs";
import type { Asked, AskedOf, FromThread, ToThread } from "./messages";
import { JobFarm, RUN, type Steps } from "./run-jobs";

/**
 * A thread of the pool: walks the jobs that it was given, a few steps of each in turn. What goes wrong in a job is told and ends that job alone.
 */
const port = parentPort;
if (!port) throw new RangeError("app/threads/worker.ts runs as a thread, not by itself");

// On Linux process 0 is the calling thread alone: pages, which the server's own thread makes, go before long work.
if (process.platform === "linux") setPriority(0, 10);

const tell = (message: FromThread) => port.postMessage(message);
/** Progress that follows within this time is left out: nobody can read it. */
const TELL_EVERY_MS = 40;
/** A job takes steps for so long before the others have their turn. */
const TURN_MS = 10;

const farms = new Map<number, JobFarm>();

port.on("message", async (message: ToThread) => {
  if (message.type === "farm") farms.set(message.farmId, new JobFarm(message.snapshot));
  else if (message.type === "forget") farms.delete(message.farmId);
  else {
    const { id, asked, stop } = message;
    await run(id, farms.get(message.farmId), asked, () => Atomics.load(stop, 0) === 1);
  }
});

async function run(id: number, farm: JobFarm | undefined, asked: Asked, isStopped: () => boolean): Promise<void> {
  try {
    if (!farm) throw new RangeError("no farm was sent before the job");
    const steps = stepsOf(farm, asked, await loadLinearSolver());
    tell({ type: "done", id, answer: await walked(id, steps, isStopped) });
  } catch (error) {
    tell({ type: "failed", id, message: error instanceof Error ? error.message : String(error) });
  }
}

async function walked(id: number, steps: Steps<JobKind>, isStopped: () => boolean): Promise<unknown> {
  let toldAt = Number.NEGATIVE_INFINITY;
  let turnAt = performance.now();
  let step = steps.next();
  while (!step.done) {
    const now = performance.now();
    if (now - toldAt >= TELL_EVERY_MS) {
      tell({ type: "progress", id, progress: step.value });
      toldAt = now;
    }
    if (now - turnAt >= TURN_MS) {
      await nextTurn();
      turnAt = performance.now();
    }
    step = steps.next(isStopped());
  }
  return step.value;
}

/** The steps of a job of any kind. */
const stepsOf = <Kind extends JobKind>(
  farm: JobFarm,
  { kind, ask }: AskedOf<Kind>,
  solver: LinearSolver,
): Steps<Kind> => RUN[kind](farm, ask, solver);
