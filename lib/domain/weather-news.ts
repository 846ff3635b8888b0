import { recordedDays, type WeatherDay } from "./records/weather-day";
import type { DailyWeather } from "./weather";

/** A recorded day of which a file says something else. */
export type ChangedDay = { readonly kept: WeatherDay; readonly read: WeatherDay };

/** What read days would bring to those that are kept: days of which nothing was known, days that would change, and how many say the same. */
export type WeatherNews = {
  readonly newDays: readonly WeatherDay[];
  readonly changedDays: readonly ChangedDay[];
  readonly sameDayCount: number;
};

/** Compares read days with those that are kept, to the tenth of a degree in which they are kept. */
export function weatherNews(kept: DailyWeather | null, read: readonly WeatherDay[]): WeatherNews {
  const known = new Map((kept ? recordedDays(kept) : []).map((day) => [day.date, day]));
  const newDays: WeatherDay[] = [];
  const changedDays: ChangedDay[] = [];
  for (const day of read) {
    const before = known.get(day.date);
    if (!before) newDays.push(day);
    else if (!isAlike(before.highC, day.highC) || !isAlike(before.lowC, day.lowC))
      changedDays.push({ kept: before, read: day });
  }
  return { newDays, changedDays, sameDayCount: read.length - newDays.length - changedDays.length };
}

const isAlike = (a: number, b: number): boolean => Math.round(a * 10) === Math.round(b * 10);
