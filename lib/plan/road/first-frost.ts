import { parseDay, toDayNumber } from "#lib/domain/day";
import { type DailyWeather, lowOn } from "#lib/domain/weather";

/** Air frost at the height of a thermometer, degrees Celsius (32 °F). Ground and hollows freeze earlier. */
export const FROST_AT_C = 0;

/** A part of a year that lacks more days than this tells no frost: one may hide in them. Our choice. */
export const MOST_MISSING_DAYS = 5;

/** Days of a record that nobody recorded, from one day to another, both counted; day numbers. */
export function missingDays(weather: DailyWeather, fromDay: number, toDay: number): number {
  let missing = 0;
  for (let day = fromDay; day <= toDay; day++) if (Number.isNaN(lowOn(weather, day))) missing += 1;
  return missing;
}

/**
 * The first day of frost in the autumn of a recorded year, as a day number: from 15 July, the middle of summer in the northern half of the earth. The last
 * day of the year where none came; null where the record lacks more than {@link MOST_MISSING_DAYS} days from August to December.
 */
export function firstFrostDay(weather: DailyWeather, year: number): number | null {
  const lastDay = dayOf(year, "12-31");
  if (missingDays(weather, dayOf(year, "08-01"), lastDay) > MOST_MISSING_DAYS) return null;
  return frostOnRecord(weather, year, lastDay) ?? lastDay;
}

/** The first day of frost that is on record from 15 July of a year through a day; null where none is, which says nothing of days that nobody recorded. Day numbers. */
export function frostOnRecord(weather: DailyWeather, year: number, throughDay: number): number | null {
  for (let day = dayOf(year, "07-15"); day <= throughDay; day++) if (lowOn(weather, day) <= FROST_AT_C) return day;
  return null;
}

const dayOf = (year: number, monthDay: string): number => toDayNumber(parseDay(`${year}-${monthDay}`));
