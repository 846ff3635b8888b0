import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Asked, FromThread, ToThread } from "./messages";

/** A job as the pool keeps it, waiting or under way. Stopped when `stop` holds a 1. */
export type Job = {
  readonly id: number;
  readonly reader: string;
  readonly isQuick: boolean;
  readonly snapshot: Snapshot;
  readonly asked: Asked;
  readonly stop: Int32Array<SharedArrayBuffer>;
  readonly told: (progress: unknown) => void;
  readonly done: (answer: unknown) => void;
  readonly failed: (error: Error) => void;
};

export const isStopped = (job: Job): boolean => Atomics.load(job.stop, 0) === 1;

/** Farms that a thread keeps, with what was made of them: the one at hand and the one before a write. */
const FARMS_KEPT = 2;
/** What the heap of a thread may grow to before it is ended; the choice on 210 beds stays below a third of it. */
const HEAP_MEGABYTES_AT_MOST = 1024;

/** A worker thread and the jobs that it is walking, a step of each in turn. */
export class Thread {
  readonly jobs = new Map<number, Job>();
  readonly #worker: Worker;
  readonly #farms: { readonly id: number; readonly snapshot: Snapshot }[] = [];
  #nextFarmId = 1;

  /**
   * @param freed  called when a job is over
   * @param lost   called once, when the thread has ended; its jobs are still in `jobs`
   */
  constructor(freed: () => void, lost: (thread: Thread, error: Error) => void) {
    this.#worker = newWorker(join(process.cwd(), "app", "threads", "thread.mjs"));
    let isLost = false;
    const lose = (error: Error) => {
      if (!isLost) lost(this, error);
      isLost = true;
    };
    this.#worker.on("message", (message: FromThread) => {
      if (this.#hear(message)) freed();
    });
    this.#worker.on("error", lose);
    this.#worker.on("exit", () => lose(new Error("the thread that did this work has ended")));
    // The server may end while a thread waits for work; a listener would hold it, so this comes last.
    this.#worker.unref();
  }

  countOf = (isQuick: boolean): number => [...this.jobs.values()].filter((job) => job.isQuick === isQuick).length;

  run(job: Job): void {
    this.jobs.set(job.id, job);
    const { id, asked, stop } = job;
    this.#tell({ type: "run", id, farmId: this.#farmId(job.snapshot), asked, stop });
  }

  /** Ends it at once, in the midst of whatever it does. */
  end(): void {
    this.#worker.terminate();
  }

  /** The number that the thread knows the farm by; sends it the farm if it has none, and lets it forget the oldest. */
  #farmId(snapshot: Snapshot): number {
    const known = this.#farms.find((farm) => farm.snapshot === snapshot);
    if (known) return known.id;
    const farmId = this.#nextFarmId++;
    this.#farms.push({ id: farmId, snapshot });
    this.#tell({ type: "farm", farmId, snapshot });
    if (this.#farms.length > FARMS_KEPT) {
      const [oldest] = this.#farms.splice(0, 1);
      this.#tell({ type: "forget", farmId: oldest.id });
    }
    return farmId;
  }

  #tell = (message: ToThread): void => this.#worker.postMessage(message);

  /** True when a job is over. */
  #hear(message: FromThread): boolean {
    const job = this.jobs.get(message.id);
    if (!job) return false;
    if (message.type === "progress") {
      job.told(message.progress);
      return false;
    }
    this.jobs.delete(job.id);
    if (message.type === "done") job.done(message.answer);
    else job.failed(new Error(message.message));
    return true;
  }
}

/** A thread from a file that is read as it lies. Written out as `new Worker`, the bundler would try to pack the file and all that it needs. */
const newWorker = (file: string): Worker =>
  Reflect.construct(Worker, [file, { resourceLimits: { maxOldGenerationSizeMb: HEAP_MEGABYTES_AT_MOST } }]);
