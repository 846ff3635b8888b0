import type { Snapshot } from "#lib/domain/snapshot";
import { plan } from "#lib/plan/road/plan";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import type { Spreads } from "./sample-spreads";
import {
  type BestOverSeasons,
  bestKeepPlan,
  comparedKeepPlans,
  type KeepPlanComparison,
  type SampledKeepPlan,
} from "./simulated-costs";
import { sampleSeasons } from "./simulation";
import type { SeasonSamples } from "./simulation-samples";

/** `winterCents` is what the winter costs when these beds are kept and the other candidates dug; left out, the farm's own rates say. */
export type KeepPlanOptions = {
  readonly spreads?: Spreads;
  readonly winterCents?: (keptBedIds: readonly number[]) => number;
};

/** Samples a plan of beds to keep. Plans sampled with one seed meet the same seasons. */
export function sampledKeepPlan(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  seed: number,
  seasonCount: number,
  options: KeepPlanOptions = {},
): SampledKeepPlan {
  const farm = withKeptBeds(snapshot, seasonYear, keptBedIds);
  const samples = sampleSeasons(farm, seasonYear, seed, 0, seasonCount, { spreads: options.spreads, openDays: [] });
  const winterCents = (options.winterCents ?? ((kept) => winterCentsOf(snapshot, seasonYear, kept)))(keptBedIds);
  return keepPlanOf(farm, seasonYear, keptBedIds, winterCents, samples);
}

/** The same from samples that were taken elsewhere, of the farm with these beds kept (`withKeptBeds`). */
export function keepPlanOf(
  farm: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  winterCents: number,
  samples: SeasonSamples,
): SampledKeepPlan {
  const { match } = plan(farm, seasonYear);
  const expected = match.needs.reduce(
    (sum, _, index) => sum + match.shortStems[index] * match.network.shortCentsOf(index),
    0,
  );
  return {
    keptBedIds,
    winterCents,
    expectedSeasonCents: expected + winterCents,
    costCents: samples.claimCents.map((cents) => cents + winterCents),
  };
}

/** What the winter costs by the farm's own rates, when these beds are kept and every other candidate is dug. */
export const winterCentsOf = (snapshot: Snapshot, seasonYear: number, keptBedIds: readonly number[]): number =>
  winterBeds(snapshot, seasonYear).reduce(
    (sum, { bed, keep, dig }) => sum + (keptBedIds.includes(bed.id) ? keep : dig).cents,
    0,
  );

/** How likely plan A (beds to keep) costs less than plan B, over common random seasons [R6]. */
export function compareKeepPlans(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIdsA: readonly number[],
  keptBedIdsB: readonly number[],
  seed: number,
  seasonCount: number,
  options: KeepPlanOptions = {},
): KeepPlanComparison {
  const [a, b] = [keptBedIdsA, keptBedIdsB].map((kept) =>
    sampledKeepPlan(snapshot, seasonYear, kept, seed, seasonCount, options),
  );
  return comparedKeepPlans(a, b);
}

/** @throws RangeError if there is no plan to choose from */
export function bestOverSeasons(
  snapshot: Snapshot,
  seasonYear: number,
  candidates: readonly (readonly number[])[],
  seed: number,
  seasonCount: number,
  options: KeepPlanOptions = {},
): BestOverSeasons {
  return bestKeepPlan(
    candidates.map((kept) => sampledKeepPlan(snapshot, seasonYear, kept, seed, seasonCount, options)),
  );
}
