import { toDayNumber, yearOf } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { CoolerStock } from "#lib/domain/records/cooler-lot";
import type { Crop } from "#lib/domain/records/crop";
import type { Purchase } from "#lib/domain/records/purchase";
import type { Variety } from "#lib/domain/records/variety";
import { inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import type { PlantingForecast } from "./forecast";
import type { Hold } from "./hold-window";
import { lastOpenDay, purchasedStems } from "./purchases";
import { Shelf } from "./shelf";

/**
 * Where stems stand until they are used: a planting that is cut that day, or stems cut before, in the cooler. `isRecorded`: the stems were cut in the
 * planting already, and it is written down. `leftFrom`: they were left to stand on that picking day [T14], a day number. `purchase`: the stems are bought in, and stand there from the day they are open.
 */
export type Stand =
  | {
      readonly kind: "planting";
      readonly planting: PlantingForecast;
      readonly isRecorded?: true;
      readonly leftFrom?: number;
    }
  | { readonly kind: "cooler"; readonly stock: CoolerStock; readonly purchase?: Purchase };

/** Stems of one stand that have the age of one day. */
export type Lot = { readonly stand: Stand; readonly stems: number };

/**
 * All stems of a variety, by the day they are cut: what the match may give away. Days ascend. With `bookingId` they were cut for that booking and are its
 * own [T2]. With `fromDay` they are nobody's yet on that day, and no event before it has any of them [T1].
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
  readonly fromDay?: number;
};

/**
 * The supply of some seasons: what these plantings give and what was cut for the cooler in those years. One row per variety that gives
 * anything, in order of variety id, lots of a day in order of id. Cooler stock counts from the day it was cut;
 * what was bought in from the day it is open [ST3]; both come before what stands in the beds on the same day, so that they are used first [M6].
 */
export function supplyOf(
  snapshot: Snapshot,
  plantings: readonly PlantingForecast[],
  ...seasonYears: readonly number[]
): VarietySupply[] {
  const shelf = new Shelf();
  for (const { stand, stems, varietyId, day } of coolerLots(snapshot, seasonYears))
    shelf.put(varietyId, null, day, { stand, stems });
  for (const { stand, varietyId, day, ownStems, freeStems, purchase } of purchasedStems(snapshot, seasonYears)) {
    const event = snapshot.bookings.find(({ id }) => id === purchase.bookingId);
    // Whoever looks at a whole season has no stems of a booking's own: what opens in time for it is there by its last cut, and anybody's.
    const inTime =
      event && day <= lastOpenDay(snapshot.farm, event)
        ? Math.min(day, toDayNumber(event.eventOn) - eventDaysOf(snapshot.farm, event).leadDays)
        : day;
    shelf.put(varietyId, null, inTime, { stand, stems: ownStems + freeStems });
  }
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
