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
export const curveOfMean = (curve: BloomCurve, { meanIndex, meanErrorDays }: KnownPoint): BloomCurve => ({
  ...curve,
  ...BY_CALENDAR,
  anchor: { kind: "day-of-year", firstCut: monthDayAt(meanIndex) },
  laterDays: 0,
  learned: unlearned(curve.learned, "laterDays"),
  firstCutSpreadDays: inTenths(meanErrorDays),
  timingOrigin: OWN,
});

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
  const sums = usualWarmth(climate).sums(PLAIN_YEAR, { baseC: clock.baseC, ceilingC: null, limitC: null });
  const moment = momentOfHeat(sums, start, clock.sumC);
  if (moment === null || yearOf(toDay(Math.round(moment))) !== PLAIN_YEAR) return null;
  return {
    ...curve,
    ...BY_CALENDAR,
    anchor: { kind: "day-of-year", firstCut: monthDayOf(toDay(Math.round(moment))) },
    laterDays: 0,
    learned: unlearned(curve.learned, "laterDays"),
    heatBaseC: clock.baseC,
    heatFrom: monthDayOf(toDay(start)),
    heatOrigin: OWN,
    firstCutSpreadDays: inTenths(clockErrorDays),
    timingOrigin: OWN,
  };
}

/** The curve with its first cut the mean of the recorded days after planting, by the calendar, and the error of that as its spread. */
export const curveOfMeanDays = (curve: BloomCurve, { meanDays, meanErrorDays }: PlantedPoint): BloomCurve => ({
  ...curve,
  ...BY_CALENDAR,
  anchor: { kind: "days-after-planting", days: Math.round(meanDays) },
  laterDays: 0,
  learned: unlearned(curve.learned, "laterDays"),
  firstCutSpreadDays: inTenths(meanErrorDays),
  timingOrigin: OWN,
});

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
  const sums = usualWarmth(climate).sums(PLAIN_YEAR, { baseC: clock.baseC, ceilingC: null, limitC: null });
  const moment = momentOfHeat(sums, start, clock.sumC);
  if (moment === null || yearOf(toDay(Math.round(moment))) !== PLAIN_YEAR) return null;
  return {
    ...curve,
    ...BY_CALENDAR,
    anchor: { kind: "days-after-planting", days: Math.round(moment) - start },
    laterDays: 0,
    learned: unlearned(curve.learned, "laterDays"),
    heatBaseC: clock.baseC,
    heatFrom,
    heatOrigin: OWN,
    firstCutSpreadDays: inTenths(clockErrorDays),
    timingOrigin: OWN,
  };
}

const inTenths = (days: number): number => Math.round(days * 10) / 10;
