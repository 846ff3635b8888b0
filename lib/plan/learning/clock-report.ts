import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import type { DailyWeather } from "#lib/domain/weather";
import type { BloomSeason } from "./bloom-season";
import { firstCutIndex, type LearnedClock, learnClock } from "./learned-clock";
import { type RecordedFirstCut, recordedSeasons, type UnusableFirstCut } from "./recorded-seasons";

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
  readonly leftOut: readonly UnusableFirstCut[];
  /** Days of weather that were missing and filled with what is usual, by year. */
  readonly filledDayCounts: ReadonlyMap<number, number>;
};

/** Days before the recorded day to which the weather is known in `predicted28`. */
const LEAD_DAYS = 28;
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
  const { seasons, leftOut, filledDayCounts } = recordedSeasons(weather, firstCuts, trainYears);
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

function errorsInDays(errors: readonly number[]): ErrorsInDays {
  const count = Math.max(1, errors.length);
  return {
    mean: errors.reduce((sum, error) => sum + error, 0) / count,
    rootMeanSquare: Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / count),
  };
}
