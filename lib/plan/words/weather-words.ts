import { type Day, inShort, toDay, yearOf } from "#lib/domain/day";
import { recordedDays } from "#lib/domain/records/weather-day";
import { type DailyWeather, type TemperatureUnit, toFahrenheit } from "#lib/domain/weather";
import type { Units } from "#lib/domain/words";
import { SEASON_BASE_C, type SeasonHeat } from "#lib/plan/road/season-heat";
import { countOf, forCount, inWholes } from "./numbers";

/** How a file's temperatures are written, in words. */
export const UNIT_WORDS: Readonly<Record<TemperatureUnit, string>> = {
  f: "°F",
  c: "°C",
  tenths: "tenths of °C, as in public daily summaries",
};

/** "64 °F", "17.8 °C": to the whole degree in °F, to the tenth in °C. */
export const degreesInWords = (celsius: number, units: Units): string =>
  units === "us" ? `${Math.round(toFahrenheit(celsius))} °F` : `${celsius.toFixed(1)} °C`;

/** "1 Jan 1995" */
export const dayOfYearInWords = (day: Day): string => `${inShort(day)} ${yearOf(day)}`;

/** What is recorded, in a sentence: "10,958 days are recorded, 1 Jan 1995 to 31 Dec 2024; none between them is missing." */
export function recordInWords(weather: DailyWeather): string {
  const recordedCount = recordedDays(weather).length;
  const missingCount = weather.highC.length - recordedCount;
  const first = toDay(weather.firstDay);
  const last = toDay(weather.firstDay + weather.highC.length - 1);
  const missing =
    missingCount === 0
      ? "none between them is missing"
      : `${countOf(missingCount, "day")} between them ${missingCount === 1 ? "is" : "are"} missing, and the climate stands in`;
  return `${countOf(recordedCount, "day is", "days are")} recorded, ${dayOfYearInWords(first)} to ${dayOfYearInWords(last)}; ${missing}.`;
}

/** "3 days early", "2 days late", "as usual" */
export function earlyInWords(daysEarly: number): string {
  if (daysEarly === 0) return "as usual";
  return `${countOf(Math.abs(daysEarly), "day")} ${daysEarly > 0 ? "early" : "late"}`;
}

/** "Warmth to 9 Jun: 412 degree days above 50 °F since 1 January, usually 380: 3 days early." */
export function seasonHeatInWords(
  { through, reached, usual, daysEarly, missingDayCount }: SeasonHeat,
  units: Units,
): string {
  const shown = (degreeDays: number) => inWholes(Math.round(units === "us" ? degreeDays * 1.8 : degreeDays));
  const base = units === "us" ? `${Math.round(toFahrenheit(SEASON_BASE_C))} °F` : `${SEASON_BASE_C} °C`;
  const missing =
    missingDayCount > 0
      ? ` ${countOf(missingDayCount, "day")} not recorded ${forCount(missingDayCount, "counts", "count")} as usual.`
      : "";
  return `Warmth to ${inShort(toDay(through))}: ${shown(reached)} degree days above ${base} since 1 January, usually ${shown(usual)}: ${earlyInWords(daysEarly)}.${missing}`;
}

/** "14 new days, up to 9 Jun 2027" */
export const newDaysInWords = (dayCount: number, last: Day | null): string =>
  `${countOf(dayCount, "new day")}${last === null ? "" : `, up to ${dayOfYearInWords(last)}`}`;
