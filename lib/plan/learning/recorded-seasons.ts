import type { Day } from "#lib/domain/day";
import type { DailyWeather } from "#lib/domain/weather";
import { type BloomSeason, indexOfDay, SEASON_DAYS, usualWarmth, warmthOfSeason } from "./bloom-season";

/** A first cut that was recorded. */
export type RecordedFirstCut = { readonly year: number; readonly firstCut: Day };

/** Why a first cut says nothing of warmth: it lies outside its season, or so many days before it have no weather. */
export type UnusableFirstCut = { readonly year: number } & (
  | { readonly kind: "outside-season"; readonly firstCut: Day }
  | { readonly kind: "no-weather"; readonly missingDayCount: number }
);

/**
 * First cuts with the weather of their seasons, each beside the row that it was read from, what was left out of them, and the days that were filled with what is
 * usual, by year.
 */
type RecordedSeasonsFound<Row> = {
  readonly seasons: readonly BloomSeason[];
  readonly rows: readonly Row[];
  readonly leftOut: readonly UnusableFirstCut[];
  readonly filledDayCounts: ReadonlyMap<number, number>;
};

/** A season with more missing days than this before its first cut says too little about warmth. Our choice: a month. */
const MOST_MISSING_DAYS = 31;

/**
 * The seasons of recorded first cuts, in order of year, each with its warmth; years that cannot be used are named with the reason.
 * @param usualYears  the years whose mean fills missing days
 * @throws RangeError if some fortnight of the year has no recorded day in any of `usualYears`
 */
export function recordedSeasons<Row extends RecordedFirstCut>(
  weather: DailyWeather,
  firstCuts: readonly Row[],
  usualYears: readonly number[],
): RecordedSeasonsFound<Row> {
  const usual = usualWarmth(weather, usualYears);
  const filledDayCounts = new Map<number, number>();
  const leftOut: UnusableFirstCut[] = [];
  const seasons: BloomSeason[] = [];
  const rows: Row[] = [];
  for (const row of [...firstCuts].sort((a, b) => a.year - b.year)) {
    const { year, firstCut } = row;
    const { filledDayCount, ...warmth } = warmthOfSeason(weather, year, usual);
    const index = indexOfDay(firstCut, warmth);
    const missing = missingUntil(weather, warmth.firstDay, index);
    if (index < 0 || index >= SEASON_DAYS) leftOut.push({ year, kind: "outside-season", firstCut });
    else if (missing > MOST_MISSING_DAYS) leftOut.push({ year, kind: "no-weather", missingDayCount: missing });
    else {
      if (filledDayCount) filledDayCounts.set(year, filledDayCount);
      seasons.push({ ...warmth, firstCutIndex: index });
      rows.push(row);
    }
  }
  return { seasons, rows, leftOut, filledDayCounts };
}

function missingUntil(weather: DailyWeather, firstDay: number, lastIndex: number): number {
  let missing = 0;
  for (let index = 0; index <= Math.min(lastIndex, SEASON_DAYS - 1); index++) {
    const place = firstDay + index - weather.firstDay;
    if (!(place >= 0 && place < weather.highC.length) || Number.isNaN(weather.highC[place])) missing += 1;
  }
  return missing;
}
