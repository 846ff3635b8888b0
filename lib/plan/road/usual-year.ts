import { dayInYear, type MonthDay, toDayNumber } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import { harmonicYear } from "#lib/maths/harmonic-year";

/** The usual high, low and mean of every day of a year, 1 January first, in degrees Celsius. The mean is half of high and low. */
export type UsualYear = {
  readonly highC: Float64Array;
  readonly lowC: Float64Array;
  readonly meanC: Float64Array;
};

const known = new WeakMap<Climate, Map<365 | 366, UsualYear>>();

/** A climate day by day: smooth, New Year too, and every month with the mean high and low that it has [F8]. */
export function usualYear(climate: Climate, year: number): UsualYear {
  const dayCount = firstDayOf(year + 1) - firstDayOf(year) === 366 ? 366 : 365;
  const ofClimate = known.get(climate) ?? new Map<365 | 366, UsualYear>();
  known.set(climate, ofClimate);
  const days = ofClimate.get(dayCount) ?? dailyClimate(climate, dayCount);
  ofClimate.set(dayCount, days);
  return days;
}

/** The day number of 1 January. */
export const firstDayOf = (year: number): number => toDayNumber(dayInYear("01-01" as MonthDay, year));

function dailyClimate({ monthlyHighsC, monthlyLowsC }: Climate, dayCount: 365 | 366): UsualYear {
  const highC = harmonicYear(monthlyHighsC, dayCount);
  const lowC = harmonicYear(monthlyLowsC, dayCount);
  return { highC, lowC, meanC: highC.map((high, index) => (high + lowC[index]) / 2) };
}
