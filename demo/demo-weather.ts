import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { type Day, dayInYear, type MonthDay, toDayNumber } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import { recordedDays, type WeatherDay } from "#lib/domain/records/weather-day";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { inventedWeather } from "./invented-weather";

/** The station that the demo farm has chosen: the one of the list that lies in its zone. */
export const DEMO_CLIMATE: Climate = stationNamed("Asheville, North Carolina");

/** Years of weather behind the demo's season: as many as it takes to replay a season through them. */
const YEARS = 10;
const SEED = 54;

/**
 * The demo's recorded weather, invented: ten years about its climate, and of its season the days before `today`; where no day is told, none of the
 * season. They are the same years in whichever season the demo is loaded for. While the last of them is not over yet, another stands before them, so that
 * ten whole ones are recorded on every day.
 */
export function demoWeather(season: number, today: Day | null): WeatherDay[] {
  const newYear = dayInYear("01-01" as MonthDay, season);
  const nextYear = dayInYear("01-01" as MonthDay, season + 1);
  const end = today === null ? newYear : today < nextYear ? today : nextYear;
  const years = recordedDays(inventedWeather(DEMO_CLIMATE, season - YEARS, toDayNumber(end), SEED));
  if (end >= newYear) return years;
  const firstYear = season - YEARS;
  return [...recordedDays(inventedWeather(DEMO_CLIMATE, firstYear - 1, firstDayOf(firstYear), SEED + 1)), ...years];
}

function stationNamed(name: string): Climate {
  const found = CLIMATE_STATIONS.find(({ station }) => station === name);
  if (!found) throw new RangeError(`${name} is not among the stations`);
  return found;
}
