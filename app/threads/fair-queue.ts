/**
 * Jobs that wait, a line for each reader. Readers take turns: whoever was served last comes last, so that forty jobs of one
 * reader hold up another by one job and not by forty.
 */
export class FairQueue<Job extends { readonly reader: string }> {
  /** Lines in the order of their turns; none is empty. */
  readonly #lines = new Map<string, Job[]>();

  get length(): number {
    return [...this.#lines.values()].reduce((sum, line) => sum + line.length, 0);
  }

  countOf = (reader: string): number => this.#lines.get(reader)?.length ?? 0;

  put(job: Job): void {
    this.#lines.set(job.reader, [...(this.#lines.get(job.reader) ?? []), job]);
  }

  /** Puts a job back that had been taken: it is the next of its reader, and its reader's turn comes first. */
  putBack(job: Job): void {
    const others = [...this.#lines].filter(([reader]) => reader !== job.reader);
    const line = [job, ...(this.#lines.get(job.reader) ?? [])];
    this.#lines.clear();
    for (const [reader, jobs] of [[job.reader, line] as const, ...others]) this.#lines.set(reader, jobs);
  }

  /** Takes the first job that may start, reader by reader; null when none may. */
  take(mayStart: (job: Job) => boolean): Job | null {
    for (const line of this.#lines.values()) {
      const job = line.find(mayStart);
      if (!job) continue;
      this.#without(job, line);
      return job;
    }
    return null;
  }

  /** Takes out the job that is looked for, whoever's it is; null when it does not wait. */
  takeOut(isIt: (job: Job) => boolean): Job | null {
    for (const line of this.#lines.values()) {
      const job = line.find(isIt);
      if (!job) continue;
      const rest = line.filter((other) => other !== job);
      if (rest.length) this.#lines.set(job.reader, rest);
      else this.#lines.delete(job.reader);
      return job;
    }
    return null;
  }

  /** The reader's other jobs go to the end of the turns. */
  #without(job: Job, line: readonly Job[]): void {
    const rest = line.filter((other) => other !== job);
    this.#lines.delete(job.reader);
    if (rest.length) this.#lines.set(job.reader, rest);
  }
}
