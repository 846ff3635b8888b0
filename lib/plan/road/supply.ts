import { toDayNumber, yearOf } from "#lib/domain/day";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { ById, inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import type { PlantingForecast } from "./forecast";
import { type Hold, holdOf } from "./hold-window";

/** Where stems stand until they are used: a planting that is cut that day, or stems cut before, in the cooler. */
export type Stand =
  | { readonly kind: "planting"; readonly planting: PlantingForecast }
  | { readonly kind: "cooler"; readonly stock: CoolerStock };

/** Stems of one stand that have the age of one day. */
export type Lot = { readonly stand: Stand; readonly stems: number };

/** All stems of a variety, by the day they are cut: what the match may give away. Days ascend. */
export type VarietySupply = {
  readonly variety: Variety;
  readonly crop: Crop;
  /** How long its stems keep, as the farm keeps them. */
  readonly hold: Hold;
  readonly days: readonly number[];
  readonly stems: readonly number[];
  readonly lots: readonly (readonly Lot[])[];
};

/**
 * The supply of some seasons: what these plantings give and what was cut for the cooler in those years. One row per variety that gives
 * anything, in order of variety id, lots of a day in order of id. Cooler stock counts from the day it was cut;
 * it comes before what stands in the beds on the same day, so that it is used first [M6].
 */
export function supplyOf(
  snapshot: Snapshot,
  plantings: readonly PlantingForecast[],
  ...seasonYears: readonly number[]
): VarietySupply[] {
  const crops = new ById("crop", snapshot.crops);
  const byVariety = new Map<number, Map<number, Lot[]>>();
  const put = (varietyId: number, day: number, lot: Lot) => {
    const byDay = byVariety.get(varietyId) ?? new Map<number, Lot[]>();
    byVariety.set(varietyId, byDay);
    const lots = byDay.get(day);
    if (lots) lots.push(lot);
    else byDay.set(day, [lot]);
  };
  for (const stock of inOrderOfId(snapshot.coolerStock))
    if (stock.stemCount > 0 && seasonYears.includes(yearOf(stock.cutOn)))
      put(stock.varietyId, toDayNumber(stock.cutOn), { stand: { kind: "cooler", stock }, stems: stock.stemCount });
  for (const planting of plantings) {
    const stand: Stand = { kind: "planting", planting };
    for (let index = 0; index < planting.cutDays.length; index++)
      put(planting.variety.id, planting.cutDays[index], { stand, stems: planting.cutStems[index] });
  }
  return inOrderOfId(snapshot.varieties).flatMap((variety) => {
    const byDay = byVariety.get(variety.id);
    if (!byDay) return [];
    const days = [...byDay.keys()].sort((a, b) => a - b);
    const lots = days.map((day) => byDay.get(day) ?? []);
    const stems = lots.map((ofDay) => ofDay.reduce((sum, lot) => sum + lot.stems, 0));
    const crop = crops.get(variety.cropId);
    return [{ variety, crop, hold: holdOf(crop, snapshot.farm), days, stems, lots }];
  });
}
