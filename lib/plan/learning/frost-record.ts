import { type Day, type MonthDay, monthDayOf, PLAIN_YEAR, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import type { FrostDates } from "#lib/domain/records/farm-settings";
import { type DailyWeather, LEAST_RECORDED_YEARS, lowOn } from "#lib/domain/weather";
import { quantile } from "#lib/maths/quantile";
import { FROST_AT_C, firstFrostDay, MOST_MISSING_DAYS, missingDays } from "#lib/plan/road/first-frost";

/** The frosts of one recorded year. A year without a frost before July, or after it, has none there: null. */
export type FrostYear = { readonly year: number; readonly lastSpring: Day | null; readonly firstAutumn: Day | null };

/**
 * What a weather record says of frost: its years, those left out with the days they lack, and the dates that 10, 50 and 90 of 100 years have
 * reached; null while fewer than {@link LEAST_RECORDED_YEARS} years are recorded.
 */
export type FrostRecord = {
  readonly years: readonly FrostYear[];
  readonly leftOut: readonly { readonly year: number; readonly missingDayCount: number }[];
  readonly dates: FrostDates | null;
};

/**
 * Frost dates from a record of daily lows [H7]. A year that lacks more than {@link MOST_MISSING_DAYS} days from March to June, or from August to December, is
 * left out. The middle of summer, 15 July, parts spring from autumn: this is for the northern half of the
 * earth. A year without an autumn frost counts as one on 31 December, a spring without one as 1 January. Quantiles as in `lib/maths/quantile`, rounded
 * to a day; dates are those of a year without 29 February.
 */
export function frostRecord(weather: DailyWeather): FrostRecord {
  const years: FrostYear[] = [];
  const leftOut: { year: number; missingDayCount: number }[] = [];
  const lastDay = weather.firstDay + weather.lowC.length - 1;
  for (let year = yearAt(weather.firstDay); year <= yearAt(lastDay); year++) {
    const spring = missingDays(weather, numberOf(`${year}-03-01`), numberOf(`${year}-06-30`));
    const autumn = missingDays(weather, numberOf(`${year}-08-01`), numberOf(`${year}-12-31`));
    if (Math.max(spring, autumn) > MOST_MISSING_DAYS) leftOut.push({ year, missingDayCount: spring + autumn });
    else years.push(frostYear(weather, year));
  }
  return { years, leftOut, dates: years.length < LEAST_RECORDED_YEARS ? null : datesOf(years) };
}

const yearAt = (day: number): number => Number(toDay(day).slice(0, 4));
const numberOf = (text: string): number => toDayNumber(parseDay(text));

function frostYear(weather: DailyWeather, year: number): FrostYear {
  const summer = numberOf(`${year}-07-15`);
  const isFrost = (day: number) => lowOn(weather, day) <= FROST_AT_C;
  let spring = summer - 1;
  while (spring >= numberOf(`${year}-01-01`) && !isFrost(spring)) spring -= 1;
  const autumn = firstFrostDay(weather, year);
  return {
    year,
    lastSpring: spring < numberOf(`${year}-01-01`) ? null : toDay(spring),
    firstAutumn: autumn === null || !isFrost(autumn) ? null : toDay(autumn),
  };
}

function datesOf(years: readonly FrostYear[]): FrostDates {
  const springs = placesOf(years.map(({ lastSpring }) => lastSpring ?? "01-01"));
  const autumns = placesOf(years.map(({ firstAutumn }) => firstAutumn ?? "12-31"));
  return {
    firstAutumnP10: dateAt(autumns, 0.1),
    firstAutumnP50: dateAt(autumns, 0.5),
    firstAutumnP90: dateAt(autumns, 0.9),
    // One spring in ten has its last frost after the 90 % point of last frosts.
    lastSpringP10: dateAt(springs, 0.9),
    lastSpringP50: dateAt(springs, 0.5),
    lastSpringP90: dateAt(springs, 0.1),
  };
}

const NEW_YEAR = numberOf(`${PLAIN_YEAR}-01-01`);

/** Days of the year, ascending; 1 January is 0. */
const placesOf = (days: readonly string[]): number[] =>
  days
    .map((day) => (day.length > 5 ? monthDayOf(parseDay(day)) : day))
    .map((monthDay) => numberOf(`${PLAIN_YEAR}-${monthDay}`) - NEW_YEAR)
    .sort((a, b) => a - b);

const dateAt = (places: readonly number[], share: number): MonthDay =>
  monthDayOf(toDay(NEW_YEAR + Math.round(quantile(places, share))));
