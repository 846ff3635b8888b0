import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import type { DailyWeather } from "#lib/domain/weather";
import { type BloomSeason, indexOfDay, SEASON_DAYS, usualWarmth, warmthOfSeason } from "./bloom-season";
import { firstCutIndex, type LearnedClock, learnClock } from "./learned-clock";

/** A first cut that was recorded. */
export type RecordedFirstCut = { readonly year: number; readonly firstCut: Day };

/** One later year: what was recorded and what each way of telling it would have said. */
type ToldYear = {
  readonly year: number;
  readonly recorded: Day;
  /** With the year's own weather known to its end. */
  readonly predicted: Day;
  /** With the weather known until 28 days before the recorded day, and the usual one after. */
  readonly predicted28: Day;
  /** The mean day of the training years. */
  readonly calendar: Day;
};

/** Errors of one way of telling, days: positive is late. */
export type ErrorsInDays = { readonly mean: number; readonly rootMeanSquare: number };

export type ClockReport = {
  readonly learned: LearnedClock;
  readonly trainedYears: readonly number[];
  readonly years: readonly ToldYear[];
  readonly errors: Readonly<Record<"predicted" | "predicted28" | "calendar", ErrorsInDays>>;
  /** Years left out, with the reason in words. */
  readonly leftOut: readonly { readonly year: number; readonly because: string }[];
  /** Days of weather that were missing and filled with what is usual, by year. */
  readonly filledDayCounts: ReadonlyMap<number, number>;
};

/** Days before the recorded day to which the weather is known in `predicted28`. */
const LEAD_DAYS = 28;
/** A season with more missing days than this before its first cut says too little about warmth. Our choice: a month. */
const MOST_MISSING_DAYS = 31;

/**
 * Learns a clock on the years up to `trainUntil` and tells every later year by it.
 * @throws RangeError if fewer than three years can be trained on
 */
export function clockReport(
  weather: DailyWeather,
  firstCuts: readonly RecordedFirstCut[],
  trainUntil: number,
): ClockReport {
  const trainYears = firstCuts.map(({ year }) => year).filter((year) => year <= trainUntil);
  const usual = usualWarmth(weather, trainYears);
  const filledDayCounts = new Map<number, number>();
  const leftOut: { year: number; because: string }[] = [];
  const seasons: BloomSeason[] = [];
  for (const { year, firstCut } of [...firstCuts].sort((a, b) => a.year - b.year)) {
    const { filledDayCount, ...warmth } = warmthOfSeason(weather, year, usual);
    const index = indexOfDay(firstCut, warmth);
    const missing = missingUntil(weather, warmth.firstDay, index);
    if (index < 0 || index >= SEASON_DAYS)
      leftOut.push({ year, because: `${firstCut} lies outside the season of ${year}` });
    else if (missing > MOST_MISSING_DAYS)
      leftOut.push({ year, because: `${missing} days before the first cut have no weather` });
    else {
      if (filledDayCount) filledDayCounts.set(year, filledDayCount);
      seasons.push({ ...warmth, firstCutIndex: index });
    }
  }
  const training = seasons.filter(({ year }) => year <= trainUntil);
  const learned = learnClock(training);
  const told = seasons.filter(({ year }) => year > trainUntil).map((season) => tell(learned, season));
  const errorsOf = (way: "predicted" | "predicted28" | "calendar") =>
    errorsInDays(told.map((year) => toDayNumber(year[way]) - toDayNumber(year.recorded)));
  return {
    learned,
    trainedYears: training.map(({ year }) => year),
    years: told,
    errors: {
      predicted: errorsOf("predicted"),
      predicted28: errorsOf("predicted28"),
      calendar: errorsOf("calendar"),
    },
    leftOut,
    filledDayCounts,
  };
}

function tell(learned: LearnedClock, season: BloomSeason): ToldYear {
  const dayOf = (index: number): Day => toDay(season.firstDay + Math.round(index));
  return {
    year: season.year,
    recorded: dayOf(season.firstCutIndex),
    predicted: dayOf(firstCutIndex(learned, season)),
    predicted28: dayOf(firstCutIndex(learned, season, season.firstCutIndex - LEAD_DAYS)),
    calendar: dayOf(learned.calendarIndex),
  };
}

function missingUntil(weather: DailyWeather, firstDay: number, lastIndex: number): number {
  let missing = 0;
  for (let index = 0; index <= Math.min(lastIndex, SEASON_DAYS - 1); index++) {
    const place = firstDay + index - weather.firstDay;
    if (!(place >= 0 && place < weather.highC.length) || Number.isNaN(weather.highC[place])) missing += 1;
  }
  return missing;
}

function errorsInDays(errors: readonly number[]): ErrorsInDays {
  const count = Math.max(1, errors.length);
  return {
    mean: errors.reduce((sum, error) => sum + error, 0) / count,
    rootMeanSquare: Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / count),
  };
}
