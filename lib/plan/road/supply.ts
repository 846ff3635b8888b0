import { toDayNumber, yearOf } from "#lib/domain/day";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import type { PlantingForecast } from "./forecast";
import type { Hold } from "./hold-window";
import { Shelf } from "./shelf";

/**
 * Where stems stand until they are used: a planting that is cut that day, or stems cut before, in the cooler. `isRecorded`: the stems were cut in the
 * planting already, and it is written down.
 */
export type Stand =
  | { readonly kind: "planting"; readonly planting: PlantingForecast; readonly isRecorded?: true }
  | { readonly kind: "cooler"; readonly stock: CoolerStock };

/** Stems of one stand that have the age of one day. */
export type Lot = { readonly stand: Stand; readonly stems: number };

/**
 * All stems of a variety, by the day they are cut: what the match may give away. Days ascend. With `bookingId` they were cut for that booking and are its
 * own [T2].
 */
export type VarietySupply = {
  readonly variety: Variety;
  /** The crop as the variety is. */
  readonly crop: Crop;
  /** How long its stems keep, as the farm keeps them. */
  readonly hold: Hold;
  readonly days: readonly number[];
  readonly stems: readonly number[];
  readonly lots: readonly (readonly Lot[])[];
  readonly bookingId?: number;
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
  const shelf = new Shelf();
  for (const { stand, stems, varietyId, day } of coolerLots(snapshot, seasonYears))
    shelf.put(varietyId, null, day, { stand, stems });
  for (const planting of plantings) {
    const stand: Stand = { kind: "planting", planting };
    const { cutDays, cutStems, usableStems } = planting;
    for (let index = 0; index < cutDays.length; index++) {
      const isAllSpare = usableStems[index] === 0 && cutStems[index] > 0;
      if (!isAllSpare) shelf.put(planting.variety.id, null, cutDays[index], { stand, stems: usableStems[index] });
    }
  }
  return shelf.supplies(snapshot);
}

/** What was put into the cooler in these years, in order of id. */
export const coolerLots = ({ coolerStock }: Snapshot, seasonYears: readonly number[]) =>
  inOrderOfId(coolerStock)
    .filter(({ stemCount, cutOn }) => stemCount > 0 && seasonYears.includes(yearOf(cutOn)))
    .map((stock) => ({
      varietyId: stock.varietyId,
      day: toDayNumber(stock.cutOn),
      stand: { kind: "cooler" as const, stock },
      stems: stock.stemCount,
    }));
