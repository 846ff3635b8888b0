import { mondayNumber } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import type { Surplus } from "./surplus";

/** A variety's surplus of one week: stems, and the last day on which any of them is of use. Day numbers. */
export type SurplusWeek = {
  readonly monday: number;
  readonly crop: Crop;
  readonly variety: Variety;
  readonly stems: number;
  readonly lastUsefulDay: number;
};

/** Surplus added up by week and variety: week by week, most stems first. */
export function surplusWeeks(surplus: readonly Surplus[]): SurplusWeek[] {
  const sums = new Map<string, SurplusWeek>();
  for (const { variety, crop, cutDay, lastUsefulDay, stems } of surplus) {
    const monday = mondayNumber(cutDay);
    const key = `${monday}/${variety.id}`;
    const known = sums.get(key);
    sums.set(key, {
      monday,
      crop,
      variety,
      stems: stems + (known?.stems ?? 0),
      lastUsefulDay: Math.max(lastUsefulDay, known?.lastUsefulDay ?? 0),
    });
  }
  return [...sums.values()].sort((a, b) => a.monday - b.monday || b.stems - a.stems || a.variety.id - b.variety.id);
}
