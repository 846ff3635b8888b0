import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Plan } from "#lib/plan/road/plan";
import { type Comparison, comparison } from "#lib/plan/what-if/comparison";
import { winterTotals } from "#lib/plan/what-if/winter";
import { KEPT, type WinterBed, winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import type { WinterCost } from "#lib/plan/winter/costs";
import { runsShort, type WinterResource, winterLimits } from "#lib/plan/winter/limits";
import { choiceInWords, focalCovered } from "./keep-or-dig-words";

/** A season under three winters, in this order: every candidate bed dug, the farm as it stands, and these beds kept. */
export type KeepBoard = {
  readonly keptBedIds: readonly number[];
  /** What keeping these beds covers, in a sentence. */
  readonly words: string;
  readonly comparison: Pick<Comparison, "totals" | "differences" | "weeks">;
  readonly winters: readonly WinterSum[];
};

/**
 * What a winter takes over all candidate beds, and what is least in the choice of beds: `weighedCents` = the match's cost (stems short at
 * their price and the weight of their claim, poorer fits, age) + `cost.cents`.
 * `runsShort` is what there is not enough of, by the rule of the choice [K3].
 */
export type WinterSum = {
  readonly cost: WinterCost;
  readonly weighedCents: number;
  readonly runsShort: readonly WinterResource[];
};

/**
 * Three plans of the same season side by side. `tried` is the plan of `withKeptBeds` with these beds, `dug` the one with none.
 */
export function keepBoard(dug: Plan, stands: Plan, tried: Plan, keptBedIds: readonly number[]): KeepBoard {
  const { snapshot, seasonYear } = tried;
  const beds = winterBeds(snapshot, seasonYear);
  const names = beds.filter(({ bed }) => keptBedIds.includes(bed.id)).map(({ bed }) => bed.name);
  const { totals, differences, weeks } = comparison([dug, stands, tried], winterTotals);
  return {
    keptBedIds,
    words: choiceInWords(names, focalCovered(dug.match, tried.match, dug.seasonYear)),
    comparison: { totals, differences, weeks },
    winters: [dug, stands, tried].map((plan) => winterSum(plan, beds)),
  };
}

function winterSum({ snapshot, match }: Plan, beds: readonly WinterBed[]): WinterSum {
  const kept = keptPlantingIds(snapshot);
  const fates = beds.map((bed) => isKept(bed, kept));
  const costs = beds.map((bed, index) => (fates[index] ? bed.keep : bed.dig));
  const sum = (of: (cost: WinterCost) => number) => costs.reduce((total, cost) => total + of(cost), 0);
  const cost = {
    cents: sum(({ cents }) => cents),
    hours: sum(({ hours }) => hours),
    labourCents: sum(({ labourCents }) => labourCents),
    materialCents: sum(({ materialCents }) => materialCents),
    replacementCents: sum(({ replacementCents }) => replacementCents),
    freeBedCents: sum(({ freeBedCents }) => freeBedCents),
    leafCubicMetres: sum(({ leafCubicMetres }) => leafCubicMetres),
    tarpSquareMetres: sum(({ tarpSquareMetres }) => tarpSquareMetres),
  };
  return {
    cost,
    weighedCents: match.solution.totalCost + cost.cents,
    runsShort: runsShort(winterLimits(snapshot.farm, beds), fates),
  };
}

const keptPlantingIds = ({ plantings }: Snapshot): ReadonlySet<number> =>
  new Set(plantings.filter(({ treatment }) => treatment === KEPT).map(({ id }) => id));

const isKept = ({ plantings }: WinterBed, keptIds: ReadonlySet<number>): boolean =>
  plantings.some(({ kept }) => keptIds.has(kept.planting.id));

/** The candidate beds of a season that stay in the ground as the farm has them; a bed of which a part is kept counts as kept. */
export function bedsKeptNow(snapshot: Snapshot, seasonYear: number): WinterBed[] {
  const kept = keptPlantingIds(snapshot);
  return winterBeds(snapshot, seasonYear).filter((bed) => isKept(bed, kept));
}

/** The plantings that must change so that these beds are kept and every other candidate is dug, as they would be. */
export function plantingsToChange(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
): readonly Planting[] {
  const before = new Map(snapshot.plantings.map((planting) => [planting.id, planting]));
  return withKeptBeds(snapshot, seasonYear, keptBedIds).plantings.filter((planting) => {
    const was = before.get(planting.id);
    return was?.treatment !== planting.treatment || was.plantedOn !== planting.plantedOn;
  });
}
