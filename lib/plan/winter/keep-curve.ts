import type { LinearSolver } from "#lib/maths/linear-programme";
import type { Selection } from "#lib/maths/switch-flow/problem";
import { type SearchEnd, searchSelections } from "#lib/maths/switch-flow/search";
import { type ChosenBeds, chosenBeds } from "./choose-beds";
import type { WinterSeason } from "./season";

/** The cheapest choice with at most so many beds kept; `chosen` is null when none keeps to the limits. */
export type CurvePoint = {
  readonly atMostCount: number;
  readonly status: "optimal" | "stopped" | "infeasible";
  readonly boundCents: number;
  readonly chosen: ChosenBeds | null;
};

/** How far work in points has come. */
export type PointsDone = { readonly doneCount: number; readonly ofCount: number };

/**
 * How the cost falls as beds are kept one more at a time: a point for 0, 1, … up to every bed without a flag [K6]. More beds allowed never
 * cost more; from the number that the best choice of all keeps, the points are all that choice. Every point reuses the floors of those
 * before. Yields as it goes; send `true` to stop with the points that are done.
 */
export function* keepCurve(
  season: WinterSeason,
  solver: LinearSolver,
): Generator<PointsDone, readonly CurvePoint[], boolean | undefined> {
  const { openBeds } = season;
  const none: Selection = openBeds.map(() => false);
  const points: CurvePoint[] = [];
  const progress = (): PointsDone => ({ doneCount: points.length, ofCount: openBeds.length + 1 });
  const pointOf = (atMostCount: number, { status, best, bound }: SearchEnd): CurvePoint => ({
    atMostCount,
    status,
    boundCents: bound,
    chosen: best && chosenBeds(season, best.selection),
  });
  const ofAll = yield* searched(season, solver, openBeds.length, none, progress);
  if (ofAll.status === "stopped") return points;
  const enoughCount = ofAll.best ? ofAll.best.selection.filter(Boolean).length : 0;
  const enough = pointOf(openBeds.length, ofAll);
  let start = none;
  for (let atMostCount = 0; atMostCount < enoughCount; atMostCount++) {
    const end = yield* searched(season, solver, atMostCount, start, progress);
    if (end.status === "stopped") return points;
    start = end.best?.selection ?? none;
    points.push(pointOf(atMostCount, end));
  }
  for (let atMostCount = enoughCount; atMostCount <= openBeds.length; atMostCount++)
    points.push({ ...enough, atMostCount });
  return points;
}

function* searched(
  { costs, limits, openBeds }: WinterSeason,
  solver: LinearSolver,
  atMost: number,
  start: Selection,
  progress: () => PointsDone,
): Generator<PointsDone, SearchEnd, boolean | undefined> {
  const countLimit = { weights: openBeds.map(() => 1n), atMost: BigInt(atMost) };
  return yield* searchSelections(solver, costs, [...limits, countLimit], [start], progress);
}
