import { normalExcess } from "#lib/maths/normal-excess";

/** How warmth is added up: degrees of a day's mean above the base, none of them above the ceiling (null: there is no ceiling). Celsius. */
export type HeatRange = { readonly baseC: number; readonly ceilingC: number | null };

/** Degree days that a day of this mean adds. */
export const heatOf = (meanC: number, { baseC, ceilingC }: HeatRange): number =>
  Math.max(0, Math.min(meanC, ceilingC ?? meanC) - baseC);

/**
 * Degree days that a day adds on average over the years, its mean being usually `usualC`: a cool week of spring has warm days that grow the crop
 * and cold ones that grow nothing, so that it adds more than a day at the usual mean would. Days lie about the usual one as a normal distribution [F9].
 * @param yearShare  the day's place in the year, 0 at its first and 1 at its last moment
 */
export function usualHeat(usualC: number, yearShare: number, { baseC, ceilingC }: HeatRange): number {
  const spreadC = daySpreadC(yearShare);
  const all = spreadC * normalExcess((usualC - baseC) / spreadC);
  return ceilingC === null ? all : all - spreadC * normalExcess((usualC - ceilingC) / spreadC);
}

/**
 * How far the mean of a day lies from the usual one, as a standard deviation in degrees Celsius: 5.5 in the middle of January, 2.5 in the middle of
 * July and a wave between. From memory, for the eastern United States; no published table was found.
 */
const daySpreadC = (yearShare: number): number => 4 + 1.5 * Math.cos(2 * Math.PI * (yearShare - MID_JANUARY));
const MID_JANUARY = 15 / 365;
