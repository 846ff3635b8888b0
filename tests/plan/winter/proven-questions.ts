import type { MixedIntegerSolver } from "#lib/maths/mixed-integer";
import { checkSearch } from "#lib/maths/switch-flow/check-search";
import { keepsTo } from "#lib/maths/switch-flow/problem";
import { searchSelections } from "#lib/maths/switch-flow/search";
import { SwitchCosts } from "#lib/maths/switch-flow/switch-costs";
import { finished } from "#lib/plan/winter/choose-beds";
import type { FewestBeds } from "#lib/plan/winter/fewest-beds";
import type { CurvePoint } from "#lib/plan/winter/keep-curve";
import { selectionOf, type WinterSeason } from "#lib/plan/winter/season";

/**
 * What is not proved of a point of the curve: no choice of so many beds costs less, by a certificate that is summed again in whole numbers, or none keeps
 * to the limits; and the point costs what its beds cost.
 */
export function curveFaults(season: WinterSeason, solver: MixedIntegerSolver, point: CurvePoint): string[] {
  const { faults, bound } = provenBound(season, season.costs, solver, point.atMostCount);
  const selection = point.chosen && selectionOf(season, point.chosen.keptBedIds);
  const cents = selection ? season.costs.cost(selection) : Number.POSITIVE_INFINITY;
  if (bound !== cents) faults.push(`at most ${point.atMostCount} beds cost ${bound} at least, the point ${cents}`);
  if (selection && (!keepsTo(season.limits, selection) || selection.filter(Boolean).length > point.atMostCount))
    faults.push("the point does not keep to the limits");
  if (selection && (point.boundCents !== bound || point.chosen?.totalCents !== bound))
    faults.push(`the point says ${point.chosen?.totalCents} and ${point.boundCents}, not ${bound}`);
  return faults;
}

/**
 * What is not proved of the fewest beds, by two certificates summed again in whole numbers: no choice leaves fewer focal stems short, and every
 * choice of one bed fewer leaves more.
 */
export function fewestFaults(season: WinterSeason, solver: MixedIntegerSolver, fewest: FewestBeds): string[] {
  const costs = focalStemsShort(season);
  const count = fewest.keptBedIds.length;
  const selection = selectionOf(season, fewest.keptBedIds);
  const least = provenBound(season, costs, solver, season.openBeds.length);
  const faults = [...least.faults];
  if (costs.cost(selection) !== fewest.focalShortStems || !keepsTo(season.limits, selection))
    faults.push(
      `these beds leave ${costs.cost(selection)} stems short, not ${fewest.focalShortStems}, or pass the limits`,
    );
  if (least.bound !== fewest.focalShortStems)
    faults.push(`${least.bound} stems are short at least, not ${fewest.focalShortStems}`);
  if (count === 0) return faults;
  const ofFewer = provenBound(season, costs, solver, count - 1);
  if (ofFewer.bound <= fewest.focalShortStems) faults.push(`${count - 1} beds leave ${ofFewer.bound} stems short`);
  return [...faults, ...ofFewer.faults];
}

/** The least that a choice of at most so many beds costs; infinite where none keeps to the limits. Its certificate is checked. */
function provenBound(season: WinterSeason, costs: SwitchCosts, solver: MixedIntegerSolver, atMostCount: number) {
  const limits = [...season.limits, { weights: season.openBeds.map(() => 1n), atMost: BigInt(atMostCount) }];
  const none = season.openBeds.map(() => false);
  const search = finished(searchSelections(solver, costs, limits, [none], () => null));
  return {
    faults: checkSearch(costs.problem, limits, costs.still, search),
    bound: search.status === "infeasible" ? Number.POSITIVE_INFINITY : search.bound,
  };
}

/** The season's match where a focal stem short costs 1, and all else nothing. */
function focalStemsShort({ futures: { network, needs, effects }, openBeds }: WinterSeason): SwitchCosts {
  return new SwitchCosts({
    flow: network.pricedBy((index) => (needs[index].role === "focal" ? 1 : 0)),
    giverCount: network.giverCount,
    effects: openBeds.map((bed) => effects[bed]),
    switchCost: openBeds.map(() => 0),
    baseCost: 0,
  });
}
