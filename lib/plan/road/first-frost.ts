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
  const dayOf = (monthDay: string) => toDayNumber(parseDay(`${year}-${monthDay}`));
  if (missingDays(weather, dayOf("08-01"), dayOf("12-31")) > MOST_MISSING_DAYS) return null;
  let day = dayOf("07-15");
  while (day < dayOf("12-31") && !(lowOn(weather, day) <= FROST_AT_C)) day += 1;
  return day;
}
