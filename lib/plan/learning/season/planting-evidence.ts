import { gammaQuantile } from "#lib/maths/gamma";
import { normalShare } from "#lib/maths/normal";
import { cutEvidence } from "./cut-evidence";
import { kernel, LATENESS, SHARED, SHARED_YIELD, YIELD } from "./score-grid";
import { CROP_YIELD_SHARE, type TimingSeen, type WatchedPlanting } from "./season-model";

/** What was seen of one planting: how likely it is at each lateness and yield, and what that says of what its crop shares. */
export type PlantingEvidence = {
  readonly planting: WatchedPlanting;
  /** Days late at each score of {@link LATENESS}. */
  readonly daysLate: Float64Array;
  /** The yield factor at each score of {@link YIELD}. */
  readonly yieldFactors: Float64Array;
  /** Chances of lateness given what the crop shares, a row a score of {@link SHARED}. */
  readonly latenessGiven: Float64Array;
  /** Likelihood by lateness, then yield, its greatest 1; null where nothing was seen. */
  readonly likelihood: Float64Array | null;
  /** Its logarithm as a message to the crop: by what it shares in lateness, then in yield; null where nothing was seen. */
  readonly message: Float64Array | null;
};

/** Chances of a yield given what the crop shares, a row a score of {@link SHARED_YIELD}. */
export const YIELD_GIVEN = kernel(SHARED_YIELD, YIELD, Math.sqrt(CROP_YIELD_SHARE));

/** Weighs all that was seen of a planting, lateness by lateness and yield by yield [O2]. */
export function plantingEvidence(planting: WatchedPlanting): PlantingEvidence {
  const { sharedSpreadDays, ownSpreadDays, yieldSpread } = planting;
  const spreadDays = Math.hypot(sharedSpreadDays, ownSpreadDays);
  const latenessGiven = latenessGivenAt(spreadDays === 0 ? 0 : sharedSpreadDays / spreadDays);
  const daysLate = LATENESS.scores.map((score) => score * spreadDays);
  const yieldFactors = factorsOf(yieldSpread);
  const likelihood = likelihoodOf(planting, daysLate, yieldFactors);
  const messageBy = planting.cuts.length === 0 ? messageOfLooks : messageOf;
  const message = likelihood && messageBy(likelihood, latenessGiven);
  return { planting, daysLate, yieldFactors, latenessGiven, likelihood, message };
}

/** A table for each number that was asked for, of which a farm has few: as many curves as differ in their spreads. */
function keptByNumber(make: (number: number) => Float64Array): (number: number) => Float64Array {
  const kept = new Map<number, Float64Array>();
  return (number) => {
    const table = kept.get(number) ?? make(number);
    if (kept.size < 1000) kept.set(number, table);
    return table;
  };
}

const latenessGivenAt = keptByNumber((loading) => kernel(SHARED, LATENESS, loading));

/** So narrow a gamma distribution is its mean. */
const NARROW = 0.01;

const factorsOf = keptByNumber((spread) => {
  if (spread < NARROW) return YIELD.scores.map(() => 1);
  const shape = 1 / spread ** 2;
  return YIELD.scores.map((score) => gammaQuantile(normalShare(score), shape) / shape);
});

function likelihoodOf(
  { timing, cuts, readyStems }: WatchedPlanting,
  daysLate: Float64Array,
  yieldFactors: Float64Array,
): Float64Array | null {
  if (timing.length === 0 && cuts.length === 0) return null;
  const width = yieldFactors.length;
  const logs = new Float64Array(daysLate.length * width);
  const evidence = cuts.map((cut) => ({ day: cut.day, logOf: cutEvidence(cut) }));
  for (let late = 0; late < daysLate.length; late++) {
    const ofTiming = timing.reduce((sum, seen) => sum + timingEvidence(seen, daysLate[late]), 0);
    logs.fill(ofTiming, late * width, (late + 1) * width);
    for (const { day, logOf } of evidence) {
      const ready = readyStems(day, daysLate[late]);
      for (let heavy = 0; heavy < width; heavy++) logs[late * width + heavy] += logOf(ready * yieldFactors[heavy]);
    }
  }
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return logs.map((log) => Math.exp(log - greatest));
}

/** What a look at a planting says of a first cut so many days late: that it came then, give or take, or that it comes later. */
function timingEvidence({ says, daysLate, spreadDays }: TimingSeen, ifLate: number): number {
  const score = (ifLate - daysLate) / spreadDays;
  return says === "came" ? -0.5 * score * score : Math.log(Math.max(normalShare(score), 1e-12));
}

function messageOf(likelihood: Float64Array, latenessGiven: Float64Array): Float64Array {
  const lates = LATENESS.scores.length;
  const heavies = YIELD.scores.length;
  const sharedLates = SHARED.scores.length;
  const sharedHeavies = SHARED_YIELD.scores.length;
  const message = new Float64Array(sharedLates * sharedHeavies);
  const byYield = new Float64Array(heavies);
  for (let shared = 0; shared < sharedLates; shared++) {
    byYield.fill(0);
    for (let late = 0; late < lates; late++) {
      const chance = latenessGiven[shared * lates + late];
      if (chance > 1e-12)
        for (let heavy = 0; heavy < heavies; heavy++) byYield[heavy] += chance * likelihood[late * heavies + heavy];
    }
    for (let row = 0; row < sharedHeavies; row++) {
      let sum = 0;
      for (let heavy = 0; heavy < heavies; heavy++) sum += YIELD_GIVEN[row * heavies + heavy] * byYield[heavy];
      message[shared * sharedHeavies + row] = Math.log(sum + 1e-300);
    }
  }
  return message;
}

/** Looks say nothing of the yield: one message, whatever the crop shares in it. */
function messageOfLooks(likelihood: Float64Array, latenessGiven: Float64Array): Float64Array {
  const lates = LATENESS.scores.length;
  const heavies = YIELD.scores.length;
  const sharedHeavies = SHARED_YIELD.scores.length;
  const message = new Float64Array(SHARED.scores.length * sharedHeavies);
  for (let shared = 0; shared < SHARED.scores.length; shared++) {
    let sum = 0;
    for (let late = 0; late < lates; late++) sum += latenessGiven[shared * lates + late] * likelihood[late * heavies];
    message.fill(Math.log(sum + 1e-300), shared * sharedHeavies, (shared + 1) * sharedHeavies);
  }
  return message;
}
