/** A line of the bench table. Times are milliseconds; `target` is what the line must reach, in words. */
export type BenchRow = {
  readonly name: string;
  readonly medianMs: number;
  readonly lowMs: number;
  readonly highMs: number;
  readonly target: string;
  readonly note: string;
};

/** Warm enough that the compiler has done with the code: as long as this, or one run where that takes longer. */
const WARM_UP_MS = 600;

/** Runs `work` warm, then so many times, and gives the median with the fastest and the slowest. */
export function timed(name: string, runCount: number, target: string, work: () => unknown, note = ""): BenchRow {
  const warmFrom = performance.now();
  do work();
  while (performance.now() - warmFrom < WARM_UP_MS);
  const times = Array.from({ length: runCount }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return rowOf(name, times, target, note);
}

/** A row from times that were taken elsewhere. */
export function rowOf(name: string, times: readonly number[], target: string, note = ""): BenchRow {
  const sorted = [...times].sort((a, b) => a - b);
  return {
    name,
    medianMs: sorted[sorted.length >> 1],
    lowMs: sorted[0],
    highMs: sorted[sorted.length - 1],
    target,
    note,
  };
}

/** The median, with the 99th percentile in words: of a few hundred times the worst says little. */
export function withTail(name: string, times: readonly number[], target: string, note: string): BenchRow {
  const sorted = [...times].sort((a, b) => a - b);
  const p99 = sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * 0.99))];
  return rowOf(name, times, `p99 ${target}`, `p99 ${p99.toFixed(0)} ms of ${times.length}; ${note}`);
}

/** The rows as a Markdown table. */
export function table(rows: readonly BenchRow[]): string {
  const number = (ms: number) =>
    ms < 10 ? ms.toFixed(2) : ms < 100 ? ms.toFixed(1) : Math.round(ms).toLocaleString("en-US");
  const lines = rows.map(
    ({ name, medianMs, lowMs, highMs, target, note }) =>
      `| ${name} | ${number(medianMs)} | ${number(lowMs)} to ${number(highMs)} | ${target} | ${note} |`,
  );
  return ["| what | median, ms | spread, ms | to reach | note |", "| --- | ---: | ---: | --- | --- |", ...lines].join(
    "\n",
  );
}
