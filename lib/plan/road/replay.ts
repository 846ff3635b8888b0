import { toDay, yearOf } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Snapshot } from "#lib/domain/snapshot";
import { type DailyWeather, LEAST_RECORDED_YEARS, meanC } from "#lib/domain/weather";
import { quantile } from "#lib/maths/quantile";
import { firstCutDay, goesByWarmth } from "./first-cut";
import { firstFrostDay } from "./first-frost";
import type { Grown } from "./grown";
import { firstDayOf, usualYear } from "./usual-year";
import { Warmth } from "./warmth";

/** A year that lacks more days than this is not replayed. Our choice: a month. */
const MOST_MISSING_DAYS = 31;

/**
 * A season replayed through recorded years [Y1]: what each planting's first cut would be in the weather of each, in days late (early, when
 * negative) against their mean. `years` stand from the earliest spring to the latest.
 */
export type Replay = {
  readonly years: readonly number[];
  /** Days late in each year, in the order of `years`; null for a planting that goes by the calendar or never blooms. */
  readonly daysLateOf: (row: Grown) => Int32Array | null;
  /** How many days after the median first frost of these years that of each came, in the order of `years`; null where its autumn was not recorded. */
  readonly frostDaysLate: readonly (number | null)[];
};

/** Replays of a record in a climate, by season: a plan, its bands and every draft ask for the same one. */
const known = new WeakMap<DailyWeather, WeakMap<Climate, Map<number, Replay | null>>>();

/**
 * Replays a season through the years that the farm has recorded. Days of the season that are recorded themselves are the same in every replay,
 * so that first cuts spread as little as the weather still to come leaves them. Null without a climate or with fewer than
 * {@link LEAST_RECORDED_YEARS} whole years.
 */
export function replay(
  { farm: { climate }, weather }: Pick<Snapshot, "farm" | "weather">,
  seasonYear: number,
): Replay | null {
  if (climate === null || weather === null) return null;
  const ofRecord = known.get(weather) ?? new WeakMap<Climate, Map<number, Replay | null>>();
  known.set(weather, ofRecord);
  const bySeason = ofRecord.get(climate) ?? new Map<number, Replay | null>();
  ofRecord.set(climate, bySeason);
  const found = bySeason.get(seasonYear);
  if (found !== undefined) return found;
  const made = replayOf(climate, weather, seasonYear);
  bySeason.set(seasonYear, made);
  return made;
}

function replayOf(climate: Climate, weather: DailyWeather, seasonYear: number): Replay | null {
  const recorded = wholeYears(weather);
  if (recorded.length < LEAST_RECORDED_YEARS) return null;
  const years = recorded
    .map((year) => ({ year, weather: seasonIn(weather, seasonYear, year) }))
    .map((one) => ({ ...one, springC: springWarmth(one.weather, climate, seasonYear) }))
    .sort((a, b) => b.springC - a.springC || a.year - b.year)
    .map(({ year, weather: lived }) => ({ year, warmth: { climate, warmth: new Warmth(climate, lived) } }));
  const frosts = years.map(({ year }) => frostPlace(weather, year));
  const told = frosts.filter((place) => place !== null).sort((a, b) => a - b);
  const ofCurves = new WeakMap<BloomCurve, Map<string, Int32Array>>();
  return {
    years: years.map(({ year }) => year),
    frostDaysLate: frosts.map((place) => place && Math.round(place - quantile(told, 0.5))),
    daysLateOf: ({ planting, curve, firstCut }) => {
      if (!curve || firstCut === null || !goesByWarmth(curve, climate)) return null;
      const byDay = ofCurves.get(curve) ?? new Map<string, Int32Array>();
      ofCurves.set(curve, byDay);
      const set = `${planting.plantedOn} ${planting.sown}`;
      const found =
        byDay.get(set) ??
        daysLate(
          years.map(({ warmth }) => firstCutDay(curve, planting, warmth)),
          seasonYear,
        );
      byDay.set(set, found);
      return found;
    },
  };
}

/** The first autumn frost of a recorded year, in days from its 1 January; null where its autumn was not recorded. */
function frostPlace(weather: DailyWeather, year: number): number | null {
  const day = firstFrostDay(weather, year);
  return day === null ? null : day - firstDayOf(year);
}

/** Days of each first cut from the mean of all, to the whole day. One that does not come before the year is over counts as the day after it. */
function daysLate(firstCuts: readonly (number | null)[], seasonYear: number): Int32Array {
  const days = firstCuts.map((day) => day ?? firstDayOf(seasonYear + 1));
  const mean = days.reduce((sum, day) => sum + day, 0) / days.length;
  return Int32Array.from(days, (day) => Math.round(day - mean));
}

/** The day by which so many of a hundred replayed years have begun to bloom, in whole days from their mean. */
export const daysLateAt = (daysLate: Int32Array, share: number): number =>
  Math.round(quantile(Float64Array.from(daysLate).sort(), share));

/** The years of a record of which few days are missing: those that a season can be replayed through. */
export function wholeYears(weather: DailyWeather): number[] {
  const years: number[] = [];
  const lastDay = weather.firstDay + weather.highC.length - 1;
  for (let year = yearOf(toDay(weather.firstDay)); year <= yearOf(toDay(lastDay)); year++) {
    let missing = 0;
    for (let day = firstDayOf(year); day < firstDayOf(year + 1); day++)
      if (Number.isNaN(meanC(weather, day))) missing += 1;
    if (missing <= MOST_MISSING_DAYS) years.push(year);
  }
  return years;
}

/**
 * The weather of a season, the year before and the year after, as the days from the recorded year `year` and its neighbours would make it: days that
 * are recorded of the season itself stay. Days are paired by their place in the year; the 366th has the weather of the 365th where a year has none.
 */
function seasonIn(weather: DailyWeather, seasonYear: number, year: number): DailyWeather {
  const firstDay = firstDayOf(seasonYear - 1);
  const dayCount = firstDayOf(seasonYear + 2) - firstDay;
  const highC = new Float64Array(dayCount).fill(Number.NaN);
  const lowC = highC.slice();
  for (let beside = -1; beside <= 1; beside++) {
    const start = firstDayOf(seasonYear + beside);
    const recordedStart = firstDayOf(year + beside);
    const recordedDays = firstDayOf(year + beside + 1) - recordedStart;
    for (let day = start; day < firstDayOf(seasonYear + beside + 1); day++) {
      const own = day - weather.firstDay;
      const lent = recordedStart + Math.min(day - start, recordedDays - 1) - weather.firstDay;
      const from = Number.isNaN(weather.highC[own] ?? Number.NaN) ? lent : own;
      highC[day - firstDay] = weather.highC[from] ?? Number.NaN;
      lowC[day - firstDay] = weather.lowC[from] ?? Number.NaN;
    }
  }
  return { firstDay, highC, lowC };
}

/** The mean warmth from 1 February to 30 June of a season, by which its springs stand in order from early to late; degrees Celsius. */
function springWarmth(weather: DailyWeather, climate: Climate, seasonYear: number): number {
  const start = firstDayOf(seasonYear);
  const usual = usualYear(climate, seasonYear).meanC;
  let sum = 0;
  for (let place = SPRING_FROM; place < SPRING_TO; place++) {
    const recorded = meanC(weather, start + place);
    sum += Number.isNaN(recorded) ? usual[place] : recorded;
  }
  return sum / (SPRING_TO - SPRING_FROM);
}

/** Places in the year of 1 February and 1 July, without 29 February. */
const SPRING_FROM = 31;
const SPRING_TO = 181;
