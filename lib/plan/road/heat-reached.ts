import { heatCourse, type SeasonWarmth } from "./first-cut";
import type { Grown } from "./grown";
import { heatBetween } from "./heat-sums";

/**
 * How far a planting has come on its way to the first cut, in degree days (Celsius): `reached` of `needed` by the morning of the day `by`, counted from
 * the morning of `from`. All that is needed is there on `reachedOn` (null: not this season), and `by` never lies after it. Day numbers.
 */
export type HeatReached = {
  readonly from: number;
  readonly by: number;
  readonly reachedOn: number | null;
  readonly reached: number;
  readonly needed: number;
};

/** The warmth that a planting has had by a day and needs for its first cut; null where the calendar tells it [F1]. */
export function heatReached(
  { planting, curve, firstCut, movedDays }: Grown,
  season: SeasonWarmth,
  today: number,
): HeatReached | null {
  const course = curve && heatCourse(curve, planting, season);
  if (!course) return null;
  const { fromDay: from, sum: needed, sums } = course;
  const reachedOn = firstCut === null ? null : firstCut - curve.laterDays - movedDays;
  const by = reachedOn === null ? today : Math.min(today, reachedOn);
  return { from, by, reachedOn, reached: Math.min(needed, heatBetween(sums, from, by) ?? 0), needed };
}
