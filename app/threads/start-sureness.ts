import type { Snapshot } from "#lib/domain/snapshot";
import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import { merge, type SeasonSamples } from "#lib/plan/chance/simulation-samples";
import type { PointsDone } from "#lib/plan/winter/keep-curve";
import type { Work } from "./asked-once";
import { pool, type Running, THREAD_COUNT } from "./pool";

type Ask = { readonly seasonYear: number; readonly keptBedIds: readonly number[]; readonly seasonCount: number };
type Asker = { readonly reader?: string; readonly told: (progress: PointsDone) => void };

/** Always the same, so that the figures move only when the farm or the beds do, and every plan meets the same seasons. */
const SEED = 1;
/** Seasons in one part: short enough to see progress, long enough that making ready costs little. */
const SEASONS_A_PART = 25;

/**
 * Samples seasons on all threads, with every bed dug and with these kept, and sums them up. Stopped, it answers from the seasons done; the answer is
 * refused when there are none.
 */
export function startSureness(
  snapshot: Snapshot,
  { seasonYear, keptBedIds, seasonCount }: Ask,
  { reader, told }: Asker,
): Work & { readonly answer: Promise<KeepSureness> } {
  const parts = Array.from({ length: Math.ceil(seasonCount / SEASONS_A_PART) }, (_, part) => {
    const firstSeason = part * SEASONS_A_PART;
    return { firstSeason, seasonCount: Math.min(SEASONS_A_PART, seasonCount - firstSeason) };
  });
  const done: (readonly SeasonSamples[] | null)[] = parts.map(() => null);
  const running = new Set<Running<"sample">>();
  let next = 0;
  let doneCount = 0;
  let isStopped = false;
  const stop = () => {
    isStopped = true;
    for (const part of running) part.stop();
  };
  const samplesOf = async (part: number) => {
    const ask = { seasonYear, plans: [[], keptBedIds], seed: SEED, ...parts[part] };
    const sampling = pool().start(snapshot, "sample", ask, { reader });
    running.add(sampling);
    // A part that is stopped in the midst of it is left out, as if it had not begun.
    const samples = await sampling.answer.catch((error: unknown) => {
      if (isStopped) return null;
      throw error;
    });
    running.delete(sampling);
    done[part] = samples;
    doneCount += samples ? ask.seasonCount : 0;
    told({ doneCount, ofCount: seasonCount });
  };
  const lane = async () => {
    while (!isStopped && next < parts.length) await samplesOf(next++);
  };
  const lanes = Promise.all(Array.from({ length: THREAD_COUNT }, lane));
  lanes.catch(stop);
  const answer = lanes.then(() => {
    const run = longestRun(done);
    if (run.length === 0) throw new Error("Stopped before a season was sampled.");
    const [dug, kept] = [0, 1].map((plan) => merge(run.map((part) => part[plan])));
    return pool().start(snapshot, "sureness", { seasonYear, keptBedIds, dug, kept }, { reader }).answer;
  });
  return { answer, stop, wasStopped: () => isStopped };
}

/**
 * The most neighbouring parts without a hole. Threads do not end in the order in which they began: of two parts the second may be done when the
 * first is stopped in the midst.
 */
function longestRun<Part>(parts: readonly (Part | null)[]): readonly Part[] {
  let longest: readonly Part[] = [];
  let run: readonly Part[] = [];
  for (const part of parts) {
    run = part === null ? [] : [...run, part];
    if (run.length > longest.length) longest = run;
  }
  return longest;
}
