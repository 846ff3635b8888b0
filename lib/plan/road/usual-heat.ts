import { normalExcess } from "#lib/maths/normal-excess";

/**
 * How warmth is added up: degrees of a day's mean above the base, none of them above the ceiling (null: there is no ceiling). From the ceiling to the limit
 * a day adds less in a straight line, and from there on nothing (null: as much as at the ceiling). Celsius.
 */
export type HeatRange = { readonly baseC: number; readonly ceilingC: number | null; readonly limitC: number | null };

/** Degree days that a day of this mean adds. */
export function heatOf(meanC: number, { baseC, ceilingC, limitC }: HeatRange): number {
  if (ceilingC === null || meanC <= ceilingC) return Math.max(0, meanC - baseC);
  return limitC === null ? ceilingC - baseC : (ceilingC - baseC) * Math.max(0, (limitC - meanC) / (limitC - ceilingC));
}

/**
 * Degree days that a day adds on average over the years, its mean being usually `usualC`: a cool week of spring has warm days that grow the crop
 * and cold ones that grow nothing, so that it adds more than a day at the usual mean would. Days lie about the usual one as a normal distribution [F9].
 * @param yearShare  the day's place in the year, 0 at its first and 1 at its last moment
 */
export function usualHeat(usualC: number, yearShare: number, { baseC, ceilingC, limitC }: HeatRange): number {
  const spreadC = daySpreadC(yearShare);
  const above = (degreesC: number) => spreadC * normalExcess((usualC - degreesC) / spreadC);
  if (ceilingC === null) return above(baseC);
  if (limitC === null) return above(baseC) - above(ceilingC);
  // Three straight lines: up from the base, down from the ceiling, level from the limit.
  const fall = (ceilingC - baseC) / (limitC - ceilingC);
  return above(baseC) - (1 + fall) * above(ceilingC) + fall * above(limitC);
}

/**
 * How far the mean of a day lies from the usual one, as a standard deviation in degrees Celsius: 5.5 in the middle of January, 2.5 in the middle of
 * July and a wave between. From memory, for the eastern United States; no published table was found.
 */
const daySpreadC = (yearShare: number): number => 4 + 1.5 * Math.cos(2 * Math.PI * (yearShare - MID_JANUARY));
const MID_JANUARY = 15 / 365;
