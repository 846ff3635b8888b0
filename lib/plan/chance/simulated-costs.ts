import { type ObservedChance, observedChance } from "#lib/maths/observed-chance";
import { RunningMean } from "#lib/maths/running-mean";

/**
 * What a plan of beds to keep costs in each sampled season, in cents: stems short at their price and the weight of their claim, and the
 * winter's cost, which is the expected one in every season. `expectedSeasonCents` is the cost when all goes as expected.
 */
export type SampledKeepPlan = {
  readonly keptBedIds: readonly number[];
  readonly winterCents: number;
  readonly expectedSeasonCents: number;
  readonly costCents: Float64Array;
};

/** Two plans over the same seasons. The chance that they cost the same to the cent is told apart. */
export type KeepPlanComparison = {
  readonly aCheaperChance: ObservedChance;
  readonly sameChance: ObservedChance;
  readonly meanCentsA: number;
  readonly meanCentsB: number;
  /** What A costs more than B on average (less, when negative), with its standard error. */
  readonly differenceCents: number;
  readonly differenceStandardErrorCents: number;
};

/** @throws RangeError unless both were sampled over the same number of seasons */
export function comparedKeepPlans(a: SampledKeepPlan, b: SampledKeepPlan): KeepPlanComparison {
  const seasonCount = a.costCents.length;
  if (b.costCents.length !== seasonCount)
    throw new RangeError(`plans must be of the same seasons, got ${seasonCount} and ${b.costCents.length}`);
  const difference = new RunningMean();
  let cheaper = 0;
  let same = 0;
  for (let season = 0; season < seasonCount; season++) {
    const more = a.costCents[season] - b.costCents[season];
    difference.add(more);
    if (more < 0) cheaper++;
    else if (more === 0) same++;
  }
  return {
    aCheaperChance: observedChance(cheaper, seasonCount),
    sameChance: observedChance(same, seasonCount),
    meanCentsA: meanOf(a.costCents),
    meanCentsB: meanOf(b.costCents),
    differenceCents: difference.mean,
    differenceStandardErrorCents: difference.standardError(),
  };
}

/**
 * The best of some plans over the seasons, and the one that looks best when all goes as expected. `lossCents` is what taking the latter
 * costs more on average, over the seasons that the best was chosen on, which flatters it a little. Indexes count the plans given; ties go
 * to the earlier.
 */
export type BestOverSeasons = {
  readonly plans: readonly (SampledKeepPlan & { readonly meanCents: number; readonly standardErrorCents: number })[];
  readonly bestIndex: number;
  readonly bestWhenAsExpectedIndex: number;
  readonly lossCents: number;
  readonly lossStandardErrorCents: number;
};

/** @throws RangeError if there is no plan to choose from */
export function bestKeepPlan(sampled: readonly SampledKeepPlan[]): BestOverSeasons {
  if (sampled.length === 0) throw new RangeError("candidates must not be empty");
  const plans = sampled.map((one) => {
    const mean = runningMeanOf(one.costCents);
    return { ...one, meanCents: mean.mean, standardErrorCents: mean.standardError() };
  });
  const bestIndex = leastBy(plans, ({ meanCents }) => meanCents);
  const bestWhenAsExpectedIndex = leastBy(plans, ({ expectedSeasonCents }) => expectedSeasonCents);
  const loss = comparedKeepPlans(plans[bestWhenAsExpectedIndex], plans[bestIndex]);
  return {
    plans,
    bestIndex,
    bestWhenAsExpectedIndex,
    lossCents: loss.differenceCents,
    lossStandardErrorCents: loss.differenceStandardErrorCents,
  };
}

function runningMeanOf(numbers: Iterable<number>): RunningMean {
  const mean = new RunningMean();
  for (const number of numbers) mean.add(number);
  return mean;
}

const meanOf = (numbers: Iterable<number>): number => runningMeanOf(numbers).mean;

const leastBy = <T>(rows: readonly T[], costOf: (row: T) => number): number =>
  rows.reduce((least, row, index) => (costOf(row) < costOf(rows[least]) ? index : least), 0);
