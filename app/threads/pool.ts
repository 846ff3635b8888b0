import type { Snapshot } from "#lib/domain/snapshot";
import { FairQueue } from "./fair-queue";
import type { JobKind, Jobs } from "./jobs";
import type { Asked } from "./messages";
import { isStopped, type Job, Thread } from "./pool-thread";

/** A job under way. `stop` makes it end with the best it has; the answer still comes. The answer is refused when the job fails. */
export type Running<Kind extends JobKind> = {
  readonly id: number;
  readonly answer: Promise<Jobs[Kind]["answer"]>;
  readonly stop: () => void;
  readonly wasStopped: () => boolean;
};

/** Who asks, and what is called with the progress. A reader is a page in a browser; work that no page asked for has none. */
export type Asker<Kind extends JobKind = JobKind> = {
  readonly reader?: string;
  readonly told?: (progress: Jobs[Kind]["progress"]) => void;
};

/** As many as the machines it is made for have cores. */
export const THREAD_COUNT = 2;

/**
 * Long jobs that a thread walks at once, a step of each in turn, and quick ones beside them: those never wait for a proof. One reader has
 * at most so many long jobs under way. What more is asked waits, and what would be too much to keep is refused. All by our own judgement.
 */
const LONG_JOBS_A_THREAD = 3;
const QUICK_JOBS_A_THREAD = 4;
const LONG_JOBS_A_READER = 2;
const WAITING_A_READER = 40;
const WAITING_IN_ALL = 200;
const QUICK: ReadonlySet<JobKind> = new Set<JobKind>(["verdicts", "orders", "sureness"]);

/** A job that was stopped has so long to end with the best it has; then its thread is ended under it. */
const GRACE_MS = 700;
/** No job runs longer: it is stopped, with the best it has. */
const MINUTES_AT_MOST = 10;

const TOO_MUCH = "Too much is being worked out already. Stop some of it, or ask again in a minute.";
const ENDED = "Stopped before there was an answer.";

/**
 * The threads that do the long work. Readers take turns; a job that is stopped ends within a second; a thread that dies fails its job
 * and is made anew.
 */
export class Pool {
  readonly #graceMs: number;
  readonly #threads: Thread[] = [];
  readonly #queue = new FairQueue<Job>();
  #nextId = 1;

  constructor(graceMs = GRACE_MS) {
    this.#graceMs = graceMs;
  }

  start<Kind extends JobKind>(
    snapshot: Snapshot,
    kind: Kind,
    ask: Jobs[Kind]["ask"],
    { reader = "", told = () => {} }: Asker<Kind> = {},
  ): Running<Kind> {
    const id = this.#nextId++;
    // The message between the threads is a door: what a kind asks, tells and answers is held to its type by RUN on the other side.
    const asked = { kind, ask } as unknown as Asked;
    const stop = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
    const isFull = this.#queue.countOf(reader) >= WAITING_A_READER || this.#queue.length >= WAITING_IN_ALL;
    const answer = new Promise<unknown>((done, failed) => {
      if (isFull) throw new Error(TOO_MUCH);
      const tell = (progress: unknown) => told(progress as Jobs[Kind]["progress"]);
      this.#queue.put({ id, reader, isQuick: QUICK.has(kind), snapshot, asked, stop, told: tell, done, failed });
    }).then((said) => said as Jobs[Kind]["answer"]);
    // Whoever asked may have gone; a failure that nobody waits for must not end the server.
    answer.catch(() => {});
    this.#go();
    return { id, answer, stop: () => this.stop(id), wasStopped: () => Atomics.load(stop, 0) === 1 };
  }

  /** Stops a job by its id, wherever it is; nothing when it is over. */
  stop(id: number): void {
    this.#queue.takeOut((job) => job.id === id)?.failed(new Error(ENDED));
    const thread = this.#threads.find(({ jobs }) => jobs.has(id));
    const job = thread?.jobs.get(id);
    if (!thread || !job || isStopped(job)) return;
    Atomics.store(job.stop, 0, 1);
    later(this.#graceMs, () => {
      if (thread.jobs.has(id)) thread.end();
    });
  }

  #go(): void {
    for (;;) {
      const job = this.#queue.take((waiting) => this.#mayStart(waiting) && this.#roomFor(waiting) !== null);
      const thread = job && this.#roomFor(job);
      if (!thread) return;
      thread.run(job);
      later(MINUTES_AT_MOST * 60_000, () => this.stop(job.id));
    }
  }

  #mayStart({ reader, isQuick }: Job): boolean {
    const theirs = this.#threads.flatMap(({ jobs }) => [...jobs.values()]).filter((job) => job.reader === reader);
    return isQuick || theirs.filter((job) => !job.isQuick).length < LONG_JOBS_A_READER;
  }

  /** The thread with the least to do, one more while there may be one; null when all have their fill. */
  #roomFor({ isQuick }: Job): Thread | null {
    const [least] = [...this.#threads].sort((a, b) => a.jobs.size - b.jobs.size);
    if (this.#threads.length < THREAD_COUNT && (least?.jobs.size ?? 1) > 0) return this.#another();
    const most = isQuick ? QUICK_JOBS_A_THREAD : LONG_JOBS_A_THREAD;
    return this.#threads
      .filter((thread) => thread.countOf(isQuick) < most)
      .reduce<Thread | null>((best, thread) => (best && best.jobs.size <= thread.jobs.size ? best : thread), null);
  }

  #another(): Thread {
    const thread = new Thread(
      () => this.#go(),
      (lost, error) => this.#lose(lost, error),
    );
    this.#threads.push(thread);
    return thread;
  }

  /** A thread ended by a stop takes down the job that would not; the others begin again. One that died fails all it had. */
  #lose(thread: Thread, error: Error): void {
    this.#threads.splice(this.#threads.indexOf(thread), 1);
    const wasStopped = [...thread.jobs.values()].some(isStopped);
    for (const job of thread.jobs.values())
      if (isStopped(job)) job.failed(new Error(ENDED));
      else if (wasStopped) this.#queue.putBack(job);
      else job.failed(error);
    this.#go();
  }
}

/** A timer that does not keep the server from ending. */
const later = (milliseconds: number, work: () => void): void => {
  setTimeout(work, milliseconds).unref();
};

/** Kept for the life of the server, across the bundles that Next makes. */
const shared: typeof globalThis & { workPool?: Pool } = globalThis;

export const pool = (): Pool => {
  shared.workPool ??= new Pool();
  return shared.workPool;
};
