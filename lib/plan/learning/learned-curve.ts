import { dayInYear, monthDayOf, PLAIN_YEAR, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import { BY_CALENDAR } from "#lib/domain/records/heat";
import { unlearned } from "#lib/domain/records/learned";
import { OWN } from "#lib/domain/sourced";
import { momentOfHeat } from "#lib/plan/road/heat-sums";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { usualWarmth } from "#lib/plan/road/warmth";
import { monthDayAt } from "./bloom-season";
import type { KnownPoint } from "./known-point";
import type { PlantedPoint } from "./planted-point";

/** The curve with its first cut on the mean day of the recorded ones, by the calendar, and the error of that as its spread. */
export const curveOfMean = (curve: BloomCurve, { meanIndex, meanErrorDays }: KnownPoint): BloomCurve =>
  byCalendar(curve, { kind: "day-of-year", firstCut: monthDayAt(meanIndex) }, meanErrorDays);

/**
 * The curve with the clock that recorded first cuts propose: its known point is the day on which a usual year of the farm's climate reaches the sum.
 * Null where they propose none, or where a usual year does not reach it within the season's own year.
 */
export function curveOfClock(
  curve: BloomCurve,
  { clock, clockErrorDays }: KnownPoint,
  climate: Climate,
): BloomCurve | null {
  if (clock === null || clockErrorDays === null) return null;
  const start = firstDayOf(PLAIN_YEAR) + clock.startDay;
  const reached = usualDayOf(clock, start, climate);
  if (reached === null) return null;
  return {
    ...byCalendar(curve, { kind: "day-of-year", firstCut: monthDayOf(toDay(reached)) }, clockErrorDays),
    ...{ heatBaseC: clock.baseC, heatFrom: monthDayOf(toDay(start)), heatOrigin: OWN },
  };
}

/** The curve with its first cut the mean of the recorded days after planting, by the calendar, and the error of that as its spread. */
export const curveOfMeanDays = (curve: BloomCurve, { meanDays, meanErrorDays }: PlantedPoint): BloomCurve =>
  byCalendar(curve, { kind: "days-after-planting", days: Math.round(meanDays) }, meanErrorDays);

/**
 * The curve with the degree days from planting that recorded plantings propose: its known point is the mean planting day, and the day on which a usual
 * year of the farm's climate has the sum from then on. Null where they propose none, or where a usual year does not reach it.
 * @param plantedIndex  the mean planting day, as a place of its season
 */
export function curveOfPlantedClock(
  curve: BloomCurve,
  { clock, clockErrorDays }: PlantedPoint,
  plantedIndex: number,
  climate: Climate,
): BloomCurve | null {
  if (clock === null || clockErrorDays === null) return null;
  const heatFrom = monthDayAt(plantedIndex);
  const start = toDayNumber(dayInYear(heatFrom, PLAIN_YEAR));
  const reached = usualDayOf(clock, start, climate);
  if (reached === null) return null;
  return {
    ...byCalendar(curve, { kind: "days-after-planting", days: reached - start }, clockErrorDays),
    ...{ heatBaseC: clock.baseC, heatFrom, heatOrigin: OWN },
  };
}

/** The curve with another first cut, so many days give or take. What was learned of the one before is not to be moved on top. */
const byCalendar = (curve: BloomCurve, anchor: BloomCurve["anchor"], errorDays: number): BloomCurve => ({
  ...curve,
  ...BY_CALENDAR,
  anchor,
  laterDays: 0,
  learned: unlearned(curve.learned, "laterDays"),
  firstCutSpreadDays: Math.round(errorDays * 10) / 10,
  timingOrigin: OWN,
});

/** The day number in a usual year of a climate on which the heat since `start` reaches a sum; null where it does not within that year. */
function usualDayOf(
  { baseC, sumC }: { readonly baseC: number; readonly sumC: number },
  start: number,
  climate: Climate,
): number | null {
  const sums = usualWarmth(climate).sums(PLAIN_YEAR, { baseC, ceilingC: null, limitC: null });
  const moment = momentOfHeat(sums, start, sumC);
  const day = moment === null ? null : Math.round(moment);
  return day === null || yearOf(toDay(day)) !== PLAIN_YEAR ? null : day;
}
