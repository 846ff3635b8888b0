import { weekdayOfDayNumber } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import type { IsAhead } from "./frost-room";
import type { Match } from "./match";
import { isOpenBed } from "./picking-days";
import type { Plan } from "./plan";
import { Shelf } from "./shelf";
import type { Lot, Stand, VarietySupply } from "./supply";

/** Whether stems are of a tender crop and not cut yet, as far as is written down. */
export const isTenderStanding = (crop: Crop, stand: Stand): boolean =>
  crop.tender && stand.kind === "planting" && !stand.isRecorded;

/**
 * What is left to give away when a frost takes all tender stems that stand: what was cut, hardy crops, tender ones cut before it, and of those that would be cut on
 * the first picking day from the frost on the part that is open on the eve [T12].
 */
export function suppliesBeforeFrost({ match: { supplies }, snapshot, today }: Plan, morning: number): VarietySupply[] {
  const shelf = new Shelf();
  const isPicked = pickedOn(snapshot.farm.pickingWeekdays);
  const eve = morning - 1;
  for (const { variety, crop, bookingId, days, lots } of supplies) {
    const seen = new Set<Lot["stand"]>();
    const put = (day: number, lot: Lot) => shelf.put(variety.id, bookingId ?? null, day, lot);
    days.forEach((day, index) => {
      for (const lot of lots[index]) {
        const { stand, stems } = lot;
        if (day < morning || !isTenderStanding(crop, stand) || stand.kind === "cooler") put(day, lot);
        else if (!seen.has(stand)) {
          seen.add(stand);
          const openStems = openOnEve(stems, day, eve, isPicked);
          if (openStems > 0 && (today === null || eve >= today) && isOpenBed(stand.planting.bed, eve))
            put(eve, { stand, stems: openStems });
        }
      }
    });
  }
  return shelf.supplies(snapshot);
}

/** Of the stems that a planting gives on a picking day those that are open on an eve before it: equal parts opened on each day since the picking day before. */
function openOnEve(stems: number, pickDay: number, eve: number, isPicked: (day: number) => boolean): number {
  let before = pickDay - 1;
  while (!isPicked(before)) before--;
  return eve <= before ? 0 : Math.floor((stems * (eve - before)) / (pickDay - before));
}

const pickedOn =
  (weekdays: readonly number[]) =>
  (day: number): boolean =>
    weekdays.includes(weekdayOfDayNumber(day));

/** The supplies of a match without what is cut ahead. */
export function suppliesBeside(snapshot: Snapshot, { supplies }: Match, isAhead: IsAhead): VarietySupply[] {
  const shelf = new Shelf();
  for (const { variety, crop, bookingId, days, lots } of supplies)
    days.forEach((cutDay, index) => {
      for (const lot of lots[index])
        if (!isAhead(crop, { stand: lot.stand, cutDay })) shelf.put(variety.id, bookingId ?? null, cutDay, lot);
    });
  return shelf.supplies(snapshot);
}
