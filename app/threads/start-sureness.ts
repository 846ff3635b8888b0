import type { Snapshot } from "#lib/domain/snapshot";
import type { KeepSureness } from "#lib/plan/chance/keep-sureness";
import { merge, type SeasonSamples } from "#lib/plan/chance/simulation-samples";
import type { PointsDone } from "#lib/plan/winter/keep-curve";
import type { Work } from "./asked-once";
import { pool, type Running, THREAD_COUNT } from "./pool";

type Ask = { readonly seasonYear: number; readonly keptBedIds: readonly number[]; readonly seasonCount: number };
type Asker = { readonly reader?: string; readonly told: (progress: SeasonsDone) => void };

/** How many seasons are sampled, and what the first of them say; null before the first look. */
export type SeasonsDone = PointsDone & { readonly soFar: KeepSureness | null };

/** Always the same, so that the figures move only when the farm or the beds do, and every plan meets the same seasons. */
const SEED = 1;
/** Seasons in one part: short enough to see progress, long enough that making ready costs little. The first are shorter, for a first look. */
const FIRST_PARTS = [5, 5, 15] as const;
const SEASONS_A_PART = 25;
/** After a look the next comes when so many times the seasons are done: the last looks cost no more than the answer itself. */
const LOOK_AGAIN = 2;
/** Fewer seasons than these say nothing that a grower would act on. */
const FIRST_LOOK = 10;

/**
 * Samples seasons on all threads, with every bed dug and with these kept, and sums them up: first the seasons that are done, and again each time
 * they have doubled, then all. Stopped, it answers from the seasons done; the answer is refused when there are none.
 */
export function startSureness(
  snapshot: Snapshot,
  { seasonYear, keptBedIds, seasonCount }: Ask,
  { reader, told }: Asker,
): Work & { readonly answer: Promise<KeepSureness> } {
  const parts = partsOf(seasonCount);
  const done: (readonly SeasonSamples[] | null)[] = parts.map(() => null);
  const running = new Set<Running<"sample">>();
  let next = 0;
  let doneCount = 0;
  let isStopped = false;
  let soFar: KeepSureness | null = null;
  let lookAt = FIRST_LOOK;
  const tell = () => told({ doneCount, ofCount: seasonCount, soFar });
  const stop = () => {
    isStopped = true;
    for (const part of running) part.stop();
  };
  const sumOf = (run: readonly (readonly SeasonSamples[])[]) => {
    const [dug, kept] = [0, 1].map((plan) => merge(run.map((part) => part[plan])));
    return pool().start(snapshot, "sureness", { seasonYear, keptBedIds, dug, kept }, { reader }).answer;
  };
  const look = async () => {
    const run = firstRun(done);
    const seen = run.reduce((sum, [part]) => sum + part.seasonCount, 0);
    if (isStopped || seen < lookAt || doneCount === seasonCount) return;
    lookAt = seen * LOOK_AGAIN;
    const sum = await sumOf(run);
    if (isStopped || sum.seasonCount < (soFar?.seasonCount ?? 0)) return;
    soFar = sum;
    tell();
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
    tell();
    // A look that fails is only a look: the answer says what is wrong.
    look().catch(() => {});
  };
  const lane = async () => {
    while (!isStopped && next < parts.length) await samplesOf(next++);
  };
  const lanes = Promise.all(Array.from({ length: THREAD_COUNT }, lane));
  lanes.catch(stop);
  const answer = lanes.then(() => {
    const run = longestRun(done);
    if (run.length === 0) throw new Error("Stopped before a season was sampled.");
    return sumOf(run);
  });
  return { answer, stop, wasStopped: () => isStopped };
}

/** So many seasons in parts that follow one another. */
function partsOf(seasonCount: number): { readonly firstSeason: number; readonly seasonCount: number }[] {
  const parts: { firstSeason: number; seasonCount: number }[] = [];
  let firstSeason = 0;
  while (firstSeason < seasonCount) {
    const most = FIRST_PARTS[parts.length] ?? SEASONS_A_PART;
    parts.push({ firstSeason, seasonCount: Math.min(most, seasonCount - firstSeason) });
    firstSeason += most;
  }
  return parts;
}

/** The parts up to the first hole. */
function firstRun<Part>(parts: readonly (Part | null)[]): readonly Part[] {
  const hole = parts.indexOf(null);
  return (hole < 0 ? parts : parts.slice(0, hole)) as readonly Part[];
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
