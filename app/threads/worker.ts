import { setImmediate as nextTurn } from "node:timers/promises";
import { parentPort } from "node:worker_threads";
import type { Snapshot } from "#lib/domain/snapshot";
import { loadMixedIntegerSolver } from "#lib/maths/mixed-integer";
import type { JobKind } from "./jobs";
import type { Asked, FromThread, ToThread } from "./messages";
import { JobFarm, RUN, type Steps } from "./run-jobs";

/**
 * A thread of the pool: does one job at a time, in the order they come. Between two steps it takes a turn of the event loop, so that a stop is
 * heard; what goes wrong in a job is told and ends that job alone.
 */
const port = parentPort;
if (!port) throw new RangeError("app/threads/worker.ts runs as a thread, not by itself");

const tell = (message: FromThread) => port.postMessage(message);
/** Progress that follows within this time is left out: nobody can read it. */
const TELL_EVERY_MS = 40;

const stopped = new Set<number>();
let snapshot: Snapshot | null = null;
let farm: JobFarm | null = null;
let last = Promise.resolve();

port.on("message", (message: ToThread) => {
  if (message.type === "stop") stopped.add(message.id);
  else if (message.type === "farm") last = last.then(() => takeFarm(message.snapshot));
  else last = last.then(() => run(message.id, message.asked));
});

function takeFarm(next: Snapshot): void {
  snapshot = next;
  farm = null;
}

async function run(id: number, asked: Asked): Promise<void> {
  try {
    if (!snapshot) throw new RangeError("no farm was sent before the job");
    farm ??= new JobFarm(snapshot, await loadMixedIntegerSolver());
    tell({ type: "done", id, answer: await walked(id, stepsOf(farm, asked)) });
  } catch (error) {
    tell({ type: "failed", id, message: error instanceof Error ? error.message : String(error) });
  } finally {
    stopped.delete(id);
  }
}

async function walked(id: number, steps: Steps<JobKind>): Promise<unknown> {
  let toldAt = Number.NEGATIVE_INFINITY;
  let step = steps.next();
  while (!step.done) {
    const now = performance.now();
    if (now - toldAt >= TELL_EVERY_MS) {
      tell({ type: "progress", id, progress: step.value });
      toldAt = now;
    }
    await nextTurn();
    step = steps.next(stopped.has(id));
  }
  return step.value;
}

/** The steps of a job of any kind: the switch lets the types of each kind meet. */
function stepsOf(farm: JobFarm, asked: Asked): Steps<JobKind> {
  switch (asked.kind) {
    case "cheapest":
      return RUN.cheapest(farm, asked.ask);
    case "fewest":
      return RUN.fewest(farm, asked.ask);
    case "curve":
      return RUN.curve(farm, asked.ask);
    case "sweep":
      return RUN.sweep(farm, asked.ask);
    case "verdicts":
      return RUN.verdicts(farm, asked.ask);
    case "sample":
      return RUN.sample(farm, asked.ask);
    case "sureness":
      return RUN.sureness(farm, asked.ask);
  }
}
