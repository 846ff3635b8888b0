import { join } from "node:path";
import { Worker } from "node:worker_threads";
import type { Snapshot } from "#lib/domain/snapshot";
import type { JobKind, Jobs } from "./jobs";
import type { Asked, FromThread, ToThread } from "./messages";

/** A job under way. `stop` makes it end with the best it has; the answer still comes. The answer is refused when the job fails. */
export type Running<Kind extends JobKind> = {
  readonly id: number;
  readonly answer: Promise<Jobs[Kind]["answer"]>;
  readonly stop: () => void;
};

type Waiting = {
  readonly id: number;
  readonly snapshot: Snapshot;
  readonly asked: Asked;
  readonly told: (progress: unknown) => void;
  readonly done: (answer: unknown) => void;
  readonly failed: (error: Error) => void;
  isStopped: boolean;
};

type Thread = { readonly worker: Worker; farm: Snapshot | null; job: Waiting | null };

/** As many as the machines it is made for have cores. */
export const THREAD_COUNT = 2;

/**
 * Two threads that do the long work, one job each at a time, the others waiting in the order they came. A thread that dies fails its job
 * and is made anew for the next.
 */
class Pool {
  readonly #threads: Thread[] = [];
  readonly #queue: Waiting[] = [];
  #nextId = 1;

  start<Kind extends JobKind>(
    snapshot: Snapshot,
    kind: Kind,
    ask: Jobs[Kind]["ask"],
    told: (progress: Jobs[Kind]["progress"]) => void = () => {},
  ): Running<Kind> {
    const id = this.#nextId++;
    // The message between the threads is a door: what a kind asks, tells and answers is held to its type by RUN on the other side.
    const asked = { kind, ask } as unknown as Asked;
    const answer = new Promise<unknown>((done, failed) => {
      const tell = (progress: unknown) => told(progress as Jobs[Kind]["progress"]);
      this.#queue.push({ id, snapshot, asked, told: tell, done, failed, isStopped: false });
    }).then((said) => said as Jobs[Kind]["answer"]);
    // Whoever asked may have gone; a failure that nobody waits for must not end the server.
    answer.catch(() => {});
    this.#go();
    return { id, answer, stop: () => this.stop(id) };
  }

  /** Stops a job by its id, wherever it is; nothing when it is over. */
  stop(id: number): void {
    const waiting = this.#queue.find((job) => job.id === id);
    if (waiting) waiting.isStopped = true;
    const thread = this.#threads.find(({ job }) => job?.id === id);
    if (thread) this.#tell(thread, { type: "stop", id });
  }

  #go(): void {
    while (this.#queue.length > 0) {
      const thread = this.#threads.find(({ job }) => job === null) ?? this.#another();
      const job = thread && this.#queue.shift();
      if (!job) return;
      thread.job = job;
      if (thread.farm !== job.snapshot) this.#tell(thread, { type: "farm", snapshot: job.snapshot });
      thread.farm = job.snapshot;
      this.#tell(thread, { type: "run", id: job.id, asked: job.asked });
      if (job.isStopped) this.#tell(thread, { type: "stop", id: job.id });
    }
  }

  #tell = (thread: Thread, message: ToThread): void => thread.worker.postMessage(message);

  /** One more thread, while there may be one. */
  #another(): Thread | null {
    if (this.#threads.length >= THREAD_COUNT) return null;
    const worker = newWorker(join(process.cwd(), "app", "threads", "thread.mjs"));
    const thread: Thread = { worker, farm: null, job: null };
    worker.on("message", (message: FromThread) => this.#hear(thread, message));
    worker.on("error", (error) => this.#lose(thread, error));
    worker.on("exit", () => this.#lose(thread, new Error("the thread that did this work has ended")));
    // The server may end while a thread waits for work; a listener would hold it, so this comes last.
    worker.unref();
    this.#threads.push(thread);
    return thread;
  }

  #hear(thread: Thread, message: FromThread): void {
    const { job } = thread;
    if (job?.id !== message.id) return;
    if (message.type === "progress") {
      job.told(message.progress);
      return;
    }
    thread.job = null;
    if (message.type === "done") job.done(message.answer);
    else job.failed(new Error(message.message));
    this.#go();
  }

  #lose(thread: Thread, error: Error): void {
    const place = this.#threads.indexOf(thread);
    if (place < 0) return;
    this.#threads.splice(place, 1);
    thread.job?.failed(error);
    this.#go();
  }
}

/** A thread from a file that is read as it lies. Written out as `new Worker`, the bundler would try to pack the file and all that it needs. */
const newWorker = (file: string): Worker => Reflect.construct(Worker, [file]);

/** Kept for the life of the server, across the bundles that Next makes. */
const shared: typeof globalThis & { workPool?: Pool } = globalThis;

export const pool = (): Pool => {
  shared.workPool ??= new Pool();
  return shared.workPool;
};
