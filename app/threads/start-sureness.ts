import type { Snapshot } from "#lib/domain/snapshot";
import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import { splitJob } from "#lib/plan/chance/simulation-job";
import { merge, type SeasonSamples } from "#lib/plan/chance/simulation-samples";
import type { PointsDone } from "./jobs";
import { pool, THREAD_COUNT } from "./pool";

type Ask = { readonly seasonYear: number; readonly keptBedIds: readonly number[]; readonly seasonCount: number };

/** Always the same, so that the figures move only when the farm or the beds do, and every plan meets the same seasons. */
const SEED = 1;
/** Seasons in one part: short enough to see progress and to stop soon, long enough that making ready costs little. */
const SEASONS_A_PART = 25;

/**
 * Samples seasons on all threads, with every bed dug and with these kept, and sums them up. Stopped, it answers from the seasons done; the answer is
 * refused when there are none.
 */
export function startSureness(
  snapshot: Snapshot,
  { seasonYear, keptBedIds, seasonCount }: Ask,
  told: (progress: PointsDone) => void,
): { readonly answer: Promise<KeepSureness>; readonly stop: () => void } {
  const job = { snapshot, seasonYear, changes: [], seed: SEED, firstSeason: 0, seasonCount };
  const parts = splitJob(job, Math.ceil(seasonCount / SEASONS_A_PART));
  const done: SeasonSamples[][] = [];
  let next = 0;
  let doneCount = 0;
  let isStopped = false;
  const stop = () => {
    isStopped = true;
  };
  /** Takes part after part. Every part that is begun is finished, so that what is done is the first seasons without a hole. */
  const lane = async () => {
    while (!isStopped && next < parts.length) {
      const { firstSeason, seasonCount: count } = parts[next++];
      const ask = { seasonYear, plans: [[], keptBedIds], seed: SEED, firstSeason, seasonCount: count };
      const samples = await pool().start(snapshot, "sample", ask).answer;
      done.push([...samples]);
      doneCount += count;
      told({ doneCount, ofCount: seasonCount });
    }
  };
  const lanes = Promise.all(Array.from({ length: THREAD_COUNT }, lane));
  lanes.catch(stop);
  const answer = lanes.then(() => {
    if (done.length === 0) throw new Error("stopped before a season was sampled");
    const [dug, kept] = [0, 1].map((plan) => merge(done.map((part) => part[plan])));
    return pool().start(snapshot, "sureness", { seasonYear, keptBedIds, dug, kept }).answer;
  });
  return { answer, stop };
}
