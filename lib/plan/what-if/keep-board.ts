import type { Plan } from "#lib/plan/road/plan";
import { type WinterBed, winterBeds } from "#lib/plan/winter/beds";
import type { WinterCost } from "#lib/plan/winter/costs";
import { keptBedTest } from "#lib/plan/winter/kept-beds";
import { runsShort, type WinterResource, winterLimits } from "#lib/plan/winter/limits";
import { type Comparison, comparison } from "./comparison";

/** A season under three winters, in this order: every candidate bed dug, the farm as it stands, and these beds kept. */
export type KeepBoard = {
  readonly keptBedIds: readonly number[];
  readonly comparison: Pick<Comparison, "totals" | "differences" | "weeks">;
  readonly winters: readonly WinterSum[];
};

/**
 * What a winter takes over all candidate beds, and what is least in the choice of beds: `weighedCents` = the match's cost (stems short at
 * their price and the weight of their claim, `brokenCents` lost by the `brokenStems`, promised ones, among them, poorer fits, age) + `cost.cents`.
 * `runsShort` is what there is not enough of, by the rule of the choice [K3].
 */
export type WinterSum = {
  readonly cost: WinterCost;
  readonly weighedCents: number;
  readonly brokenStems: number;
  readonly brokenCents: number;
  readonly runsShort: readonly WinterResource[];
};

/**
 * Three plans of the same season side by side. `tried` is the plan of `withKeptBeds` with these beds, `dug` the one with none.
 */
export function keepBoard(dug: Plan, stands: Plan, tried: Plan, keptBedIds: readonly number[]): KeepBoard {
  const { snapshot, seasonYear } = stands;
  // A bed's two futures cost the same in all three plans, which differ in the one it has.
  const beds = winterBeds(snapshot, seasonYear);
  const plans = [dug, stands, tried];
  const sums = plans.map((plan) => winterSum(plan, beds));
  const { totals, differences, weeks } = comparison(plans, (plan) => sums[plans.indexOf(plan)].cost);
  return {
    keptBedIds,
    comparison: { totals, differences, weeks },
    winters: sums,
  };
}

function winterSum({ snapshot, match }: Plan, beds: readonly WinterBed[]): WinterSum {
  const fates = beds.map(keptBedTest(snapshot));
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
    ...match.network.broken(match.solution),
    runsShort: runsShort(winterLimits(snapshot.farm, beds), fates),
  };
}
