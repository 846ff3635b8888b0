import type { Snapshot } from "#lib/domain/snapshot";
import { meanC } from "#lib/domain/weather";
import { warmthOf } from "./first-cut";
import { heatBetween, momentOfHeat } from "./heat-sums";
import type { HeatRange } from "./usual-heat";
import { firstDayOf } from "./usual-year";
import { usualWarmth } from "./warmth";

/** Warmth of summer flowers is added up above 10 °C (50 °F): common practice, from memory. */
export const SEASON_BASE_C = 10;
const RANGE: HeatRange = { baseC: SEASON_BASE_C, ceilingC: null, limitC: null };

/** Before the usual year has so many degree days, a warm week in winter would be told as weeks early. Our choice. */
const LEAST_USUAL = 50;

/** With less than this share of the usual year's degree days still to come, a cool week in autumn would be told as weeks late, and moves no first cut any more. Our choice. */
const LEAST_TO_COME = 1 / 10;

/**
 * A season's warmth beside the usual year's, in degree days (Celsius) above {@link SEASON_BASE_C} from 1 January through a day. `daysEarly` is below 0
 * where the season is late. Of `missingDayCount` days nobody recorded anything: they count as usual.
 */
export type SeasonHeat = {
  /** The last recorded day, as a day number. */
  readonly through: number;
  readonly reached: number;
  readonly usual: number;
  readonly daysEarly: number;
  readonly missingDayCount: number;
};

/**
 * How warm a season has been up to its last recorded day, today at the latest [H10]. Null without a climate, without a recorded day in the season's year, as long as the
 * usual year has too few degree days to say anything, and once it has nearly all of them. `today` is a day number.
 */
export function seasonHeat(
  { farm, weather }: Pick<Snapshot, "farm" | "weather">,
  seasonYear: number,
  today: number,
): SeasonHeat | null {
  const own = warmthOf(farm, weather);
  if (!own || !weather) return null;
  const first = firstDayOf(seasonYear);
  let through = Math.min(today, firstDayOf(seasonYear + 1) - 1, weather.firstDay + weather.highC.length - 1);
  while (through >= first && Number.isNaN(meanC(weather, through))) through--;
  if (through < first) return null;
  const usualSums = usualWarmth(own.climate).sums(seasonYear, RANGE);
  const usual = heatBetween(usualSums, first, through + 1) ?? 0;
  const ofYear = heatBetween(usualSums, first, firstDayOf(seasonYear + 1)) ?? usual;
  if (usual < LEAST_USUAL || usual > (1 - LEAST_TO_COME) * ofYear) return null;
  const reached = heatBetween(own.warmth.sums(seasonYear, RANGE), first, through + 1) ?? 0;
  const moment = momentOfHeat(usualSums, first, reached) ?? through + 1;
  let missingDayCount = 0;
  for (let day = first; day <= through; day++) if (Number.isNaN(meanC(weather, day))) missingDayCount += 1;
  return { through, reached, usual, daysEarly: Math.round(moment - (through + 1)) + 0, missingDayCount };
}
