import { toDay, yearOf } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { SeasonWarmth } from "./first-cut";
import { firstDayOf, usualYear } from "./usual-year";

/** Days that bound a bloom, as day numbers: its first, the first frost, and 1 January after its season, which no bloom that waits for frost passes. */
export type BloomBounds = { readonly opensFrom: number; readonly frostDay: number; readonly yearEnd: number };

/**
 * Stems of a plant in each week from the first cut: the curve's weeks; of a tender crop that blooms until the frost, its last week again and again,
 * until the frost falls in or before the last [F10].
 */
export function weeksOfBloom(
  { ends, stemsPerPlantByWeek }: BloomCurve,
  { tender }: Crop,
  { opensFrom, frostDay, yearEnd }: BloomBounds,
): readonly number[] {
  if (ends !== "frost" || !tender) return stemsPerPlantByWeek;
  const weekCount = Math.ceil((Math.min(frostDay, yearEnd) - opensFrom) / 7);
  const more = weekCount - stemsPerPlantByWeek.length;
  if (more <= 0) return stemsPerPlantByWeek;
  return [...stemsPerPlantByWeek, ...Array<number>(more).fill(stemsPerPlantByWeek.at(-1) ?? 0)];
}

/**
 * The day from which heat lets nothing open any more: the first from the first cut on whose usual high comes to the curve's degrees [F11]. Null
 * where heat does not end it within its weeks, or the farm has no climate.
 */
export function heatEndDay(
  { endHighC, stemsPerPlantByWeek }: BloomCurve,
  firstCut: number,
  season: SeasonWarmth,
): number | null {
  if (endHighC === null || season === null) return null;
  const lastDay = firstCut + stemsPerPlantByWeek.length * 7 - 1;
  let year = yearOf(toDay(firstCut));
  for (let day = firstCut; day <= lastDay; year++) {
    const { highC } = usualYear(season.climate, year);
    const newYear = firstDayOf(year);
    for (; day <= lastDay && day < newYear + highC.length; day++) if (highC[day - newYear] >= endHighC) return day;
  }
  return null;
}
