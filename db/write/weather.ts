import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { loadWeatherYears } from "#db/read/read";
import { weatherYear } from "#db/schema/weather";
import { inShort, yearOf } from "#lib/domain/day";
import { type WeatherDay, weatherRow, weatherYearsWith } from "#lib/domain/records/weather-day";
import { counted } from "./known";
import { refuse } from "./refusal";
import { type Written, write } from "./write";

/** Writes recorded days as one change; what the farm had of these days is replaced, every other day stays. Gives the number of days. */
export const takeWeather = (database: FarmDatabase, days: readonly WeatherDay[]): Written =>
  write(database, () => {
    if (days.length === 0) refuse("", "there is no day to take");
    putWeatherDays(database, days);
    return { title: `took ${counted(days.length, "day", "days")} of weather, ${spanOf(days)}`, result: days.length };
  });

/** Removes every recorded day, as one change. Gives the number of years that had any. */
export const removeWeather = (database: FarmDatabase): Written =>
  write(database, () => {
    const { changes } = database.delete(weatherYear).run();
    return { title: `removed the weather of ${counted(changes, "year", "years")}`, result: changes };
  });

/** Writes recorded days inside a change that is open. */
export function putWeatherDays(database: FarmDatabase, days: readonly WeatherDay[]): void {
  if (days.length === 0) return;
  const before = loadWeatherYears(database);
  const known = new Set(before.map(({ id }) => id));
  for (const year of weatherYearsWith(before, days)) {
    const row = weatherRow(year);
    if (known.has(row.id)) database.update(weatherYear).set(row).where(eq(weatherYear.id, row.id)).run();
    else database.insert(weatherYear).values(row).run();
  }
}

/** "1 Jan 1995 to 31 Dec 2024" */
function spanOf(days: readonly WeatherDay[]): string {
  const dates = days.map(({ date }) => date).sort();
  const inWords = (date: (typeof dates)[number]) => `${inShort(date)} ${yearOf(date)}`;
  const [first, last] = [dates[0], dates[dates.length - 1]];
  return first === last ? inWords(first) : `${inWords(first)} to ${inWords(last)}`;
}
