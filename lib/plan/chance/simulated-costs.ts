import type { Snapshot } from "#lib/domain/snapshot";
import { type ObservedChance, observedChance } from "#lib/maths/observed-chance";
import { RunningMean } from "#lib/maths/running-mean";
import { winterBeds } from "#lib/plan/winter/beds";
import type { SeasonSamples } from "./simulation-samples";

/**
 * What a plan of beds to keep costs in each sampled season, in cents: stems short at their price and the weight of their claim, and the
 * winter's cost, which is the expected one in every season.
 */
export const seasonCents = ({ claimCents }: SeasonSamples, winterCents: number): Float64Array =>
  claimCents.map((cents) => cents + winterCents);

/** What the winter costs by the farm's own rates, when these beds are kept and every other candidate is dug. */
export const winterCentsOf = (snapshot: Snapshot, seasonYear: number, keptBedIds: readonly number[]): number =>
  winterBeds(snapshot, seasonYear).reduce(
    (sum, { bed, keep, dig }) => sum + (keptBedIds.includes(bed.id) ? keep : dig).cents,
    0,
  );

/** Two plans over the same seasons. The chance that they cost the same to the cent is told apart. */
export type SeasonCentsCompared = {
  readonly aCheaperChance: ObservedChance;
  readonly sameChance: ObservedChance;
  /** What A costs more than B on average (less, when negative), with its standard error. */
  readonly differenceCents: number;
  readonly differenceStandardErrorCents: number;
};

/**
 * Two plans season by season [R6], from what each costs in the same seasons.
 * @throws RangeError unless both were sampled over the same number of seasons
 */
export function comparedSeasonCents(a: Float64Array, b: Float64Array): SeasonCentsCompared {
  if (b.length !== a.length) throw new RangeError(`plans must be of the same seasons, got ${a.length} and ${b.length}`);
  const difference = new RunningMean();
  let cheaper = 0;
  let same = 0;
  for (let season = 0; season < a.length; season++) {
    const more = a[season] - b[season];
    difference.add(more);
    if (more < 0) cheaper++;
    else if (more === 0) same++;
  }
  return {
    aCheaperChance: observedChance(cheaper, a.length),
    sameChance: observedChance(same, a.length),
    differenceCents: difference.mean,
    differenceStandardErrorCents: difference.standardError(),
  };
}
