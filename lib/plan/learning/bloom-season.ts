import { type Day, type MonthDay, monthDayOf, PLAIN_YEAR, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import { type DailyWeather, meanC } from "#lib/domain/weather";

/**
 * One season seen through a thermometer: the mean temperature of each day, degrees Celsius, from 1 September of the year before to
 * 31 December. Places in it ("index") count days from that 1 September; no day is missing.
 */
export type WarmthOfSeason = { readonly year: number; readonly firstDay: number; readonly meanC: Float64Array };

/** A season with the day on which its first stem was cut, as an index into its warmth. */
export type BloomSeason = WarmthOfSeason & { readonly firstCutIndex: number };

const dayOf = (year: number, monthDay: string): number => toDayNumber(parseDay(`${year}-${monthDay}`));

/** Index of 1 January: 1 September to 31 December are always 122 days. */
export const NEW_YEAR_INDEX = 122;

/** Days from 1 September to 31 December of the next year, in a year without 29 February. */
export const SEASON_DAYS = NEW_YEAR_INDEX + 365;

/** The usual mean temperature of each place of a season, from the recorded days of some years; see {@link usualWarmth}. */
export type UsualWarmth = { readonly meanC: Float64Array };

/** Days each side of a place that are averaged with it, so that few years still give a smooth course. Our choice. */
const SMOOTHING_DAYS = 7;

/**
 * The mean temperature of each place of a season over the recorded days of `years`, smoothed over a fortnight.
 * @throws RangeError if some fortnight of the year has no recorded day in any of them
 */
export function usualWarmth(weather: DailyWeather, years: readonly number[]): UsualWarmth {
  const sum = new Float64Array(SEASON_DAYS);
  const count = new Int32Array(SEASON_DAYS);
  for (const year of years) {
    const first = dayOf(year - 1, "09-01");
    for (let index = 0; index < SEASON_DAYS; index++) {
      const warmth = meanC(weather, first + index);
      if (Number.isNaN(warmth)) continue;
      sum[index] += warmth;
      count[index] += 1;
    }
  }
  return { meanC: Float64Array.from(sum, (_, index) => smoothed(sum, count, index)) };
}

function smoothed(sum: Float64Array, count: Int32Array, place: number): number {
  let warmth = 0;
  let days = 0;
  for (
    let index = Math.max(0, place - SMOOTHING_DAYS);
    index <= Math.min(SEASON_DAYS - 1, place + SMOOTHING_DAYS);
    index++
  ) {
    warmth += sum[index];
    days += count[index];
  }
  if (days === 0) throw new RangeError(`weather must have a recorded day within a week of place ${place} of a season`);
  return warmth / days;
}

/** A season's warmth with its gaps filled from what is usual, and how many days were filled. */
export function warmthOfSeason(
  weather: DailyWeather,
  year: number,
  usual: UsualWarmth,
): WarmthOfSeason & { readonly filledDayCount: number } {
  const firstDay = dayOf(year - 1, "09-01");
  let filledDayCount = 0;
  const course = usual.meanC.map((usually, index) => {
    const warmth = meanC(weather, firstDay + index);
    if (!Number.isNaN(warmth)) return warmth;
    filledDayCount += 1;
    return usually;
  });
  return { year, firstDay, meanC: course, filledDayCount };
}

/** The index of a day in the season of its own year. */
export const indexOfDay = (day: Day, season: Pick<WarmthOfSeason, "firstDay">): number =>
  toDayNumber(day) - season.firstDay;

/** A place of a season as a day of any year. */
export const monthDayAt = (index: number): MonthDay =>
  monthDayOf(toDay(dayOf(PLAIN_YEAR, "01-01") + Math.round(index) - NEW_YEAR_INDEX));
