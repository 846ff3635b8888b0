import { normalQuantile } from "#lib/maths/normal";
import type { RandomSource } from "#lib/maths/random";
import { type BloomSeason, NEW_YEAR_INDEX, SEASON_DAYS } from "#lib/plan/learning/bloom-season";

/** An invented season's mean temperatures: a yearly wave, slow weather and fast weather. */
export function inventedWarmth(random: RandomSource, meanOfYearC = 9): Float64Array {
  const gauss = () => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random())));
  let slow = 0;
  let fast = 0;
  return Float64Array.from({ length: SEASON_DAYS }, (_, index) => {
    slow = 0.97 * slow + 0.3 * gauss();
    fast = 0.7 * fast + 1.8 * gauss();
    return meanOfYearC - 9 * Math.cos((2 * Math.PI * (index - NEW_YEAR_INDEX - 20)) / 365) + slow + fast;
  });
}

/** Invented seasons whose first cut is what `truth` makes of their warmth. */
export const inventedSeasons = (
  random: RandomSource,
  seasonCount: number,
  truth: (meanC: Float64Array) => number,
): BloomSeason[] =>
  Array.from({ length: seasonCount }, (_, index) => {
    const meanC = inventedWarmth(random);
    return { year: 1990 + index, firstDay: index * 365, meanC, firstCutIndex: truth(meanC) };
  });

/** The day on which degree days above `baseC`, walked one by one from `startIndex`, reach `sum`: a slow second method. */
export function walkedIndex(meanC: Float64Array, startIndex: number, baseC: number, sum: number): number {
  let heat = 0;
  for (let index = startIndex; index < meanC.length; index++) {
    const today = Math.max(0, meanC[index] - baseC);
    if (heat + today >= sum) return index - 1 + (sum - heat) / today;
    heat += today;
  }
  return meanC.length - 1;
}
