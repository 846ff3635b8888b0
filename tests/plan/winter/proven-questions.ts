import type { LinearSolver } from "#lib/maths/linear-programme";
import { checkSearch } from "#lib/maths/switch-flow/check-search";
import { keepsTo } from "#lib/maths/switch-flow/problem";
import { searchSelections } from "#lib/maths/switch-flow/search";
import { finished } from "#lib/plan/winter/choose-beds";
import type { CurvePoint } from "#lib/plan/winter/keep-curve";
import { selectionOf, type WinterSeason } from "#lib/plan/winter/season";

/**
 * What is not proved of a point of the curve: no choice of so many beds costs less, by a certificate that is summed again in whole numbers, or none keeps
 * to the limits; and the point costs what its beds cost.
 */
export function curveFaults(season: WinterSeason, solver: LinearSolver, point: CurvePoint): string[] {
  const { faults, bound } = provenBound(season, solver, point.atMostCount);
  const selection = point.chosen && selectionOf(season, point.chosen.keptBedIds);
  const cents = selection ? season.costs.cost(selection) : Number.POSITIVE_INFINITY;
  if (bound !== cents) faults.push(`at most ${point.atMostCount} beds cost ${bound} at least, the point ${cents}`);
  if (selection && (!keepsTo(season.limits, selection) || selection.filter(Boolean).length > point.atMostCount))
    faults.push("the point does not keep to the limits");
  if (selection && (point.boundCents !== bound || point.chosen?.totalCents !== bound))
    faults.push(`the point says ${point.chosen?.totalCents} and ${point.boundCents}, not ${bound}`);
  return faults;
}

/** The least that a choice of at most so many beds costs; infinite where none keeps to the limits. Its certificate is checked. */
function provenBound({ costs, limits: ofFarm, openBeds }: WinterSeason, solver: LinearSolver, atMostCount: number) {
  const limits = [...ofFarm, { weights: openBeds.map(() => 1n), atMost: BigInt(atMostCount) }];
  const none = openBeds.map(() => false);
  const search = finished(searchSelections(solver, costs, limits, [none], () => null));
  return {
    faults: checkSearch(costs.problem, limits, costs.still, search),
    bound: search.status === "infeasible" ? Number.POSITIVE_INFINITY : search.bound,
  };
}
