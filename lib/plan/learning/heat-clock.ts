import { NEW_YEAR_INDEX } from "./bloom-season";

/**
 * How a plant counts warmth. `baseC`: degree days above a base temperature, the usual count. `perTenDegrees`: a rate that is multiplied
 * by so much for each ten degrees (the Q10 of physiology), which has no threshold.
 */
export type WarmthResponse = { readonly baseC: number } | { readonly perTenDegrees: number };

/**
 * A clock of warmth: heat is counted from a day on, and the first stem is cut when it reaches a sum. The sum asked for may fall as days go by, or as
 * days of cold are counted: light and winter's rest bring a plant on, too. Falls are shares a day: 0.01 asks for 1 % less after each.
 */
export type HeatClock = {
  /** The day from which heat is counted, in days from 1 January; negative in the year before. */
  readonly startDay: number;
  readonly response: WarmthResponse;
  readonly fallPerDay: number;
  readonly fallPerColdDay: number;
};

/**
 * A day colder than this on average counts as a day of cold, degrees Celsius. The classic count of chilling takes hours between 0 and 7.2 °C
 * (45 °F); whole days below 7 °C by their mean are our reading of it, since highs and lows are all we have (from memory).
 */
const COLD_BELOW_C = 7;

/** What one day of a mean temperature adds to the heat sum: degree days above the base, or days at the rate of 0 °C. */
export function heatOfDay(meanC: number, response: WarmthResponse): number {
  if ("baseC" in response) return Math.max(0, meanC - response.baseC);
  return response.perTenDegrees ** (meanC / 10);
}

/** The first index from which cold days are counted: 1 October. */
const COLD_FROM_INDEX = 30;

/**
 * A season as one clock sees it, ready to be asked for any sum: heat added up to each day, and how far the sum asked for has fallen by then
 * (1 = not at all; the reciprocal is kept). Both never go down, so the day of a sum is found by halving.
 */
export type SeasonCourse = { readonly heat: Float64Array; readonly eased: Float64Array };

/** Heat added up to the end of each day of a season, from its first day. */
export function heatAddedUp(heatOfDays: Float64Array): Float64Array {
  let sum = 0;
  return heatOfDays.map((heat) => {
    sum += heat;
    return sum;
  });
}

/** Share of each day that counts as cold: 1 or 0 for a recorded day. */
export const coldOfDays = (meanC: Float64Array): Float64Array => meanC.map((warmth) => (warmth < COLD_BELOW_C ? 1 : 0));

/** How much more a heat sum is worth on each day, for the sum asked for has fallen by then. */
export function easedBy(coldDays: Float64Array, fallPerDay: number, fallPerColdDay: number): Float64Array {
  let cold = 0;
  return coldDays.map((share, index) => {
    if (index >= COLD_FROM_INDEX) cold += share;
    return Math.exp(fallPerDay * (index - NEW_YEAR_INDEX) + fallPerColdDay * cold);
  });
}

/** What a course has reached at the end of a day, in the unit of its heat sum. */
export function reachedAt({ heat, eased }: SeasonCourse, startIndex: number, index: number): number {
  if (index < startIndex) return 0;
  return (heat[index] - (startIndex > 0 ? heat[startIndex - 1] : 0)) * eased[index];
}

/**
 * When a course reaches `sum`: an index with its fraction of a day, the end of a day being its whole number. The last day of the season
 * when it never does.
 */
export function indexOfSum(course: SeasonCourse, startIndex: number, sum: number): number {
  let low = startIndex;
  let high = course.heat.length - 1;
  if (reachedAt(course, startIndex, high) < sum) return high;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (reachedAt(course, startIndex, middle) >= sum) high = middle;
    else low = middle + 1;
  }
  const before = reachedAt(course, startIndex, low - 1);
  const after = reachedAt(course, startIndex, low);
  return low - 1 + (after > before ? (sum - before) / (after - before) : 1);
}
