import type { Farm } from "#lib/domain/records/farm-settings";
import { frostDayOf, type PlantingForecast } from "./forecast";
import { pickingDays } from "./picking-days";

/** The picking day to which a bed's stems that are left on a day wait [T14]: the next one that is open to it [F6]. Day numbers. */
export const waitsUntil = ({ pickingWeekdays }: Farm, { bed }: Pick<PlantingForecast, "bed">, day: number): number =>
  pickingDays(pickingWeekdays)(day + 1, bed);

/**
 * Of the stems that a planting was to give on a picking day, and that can be promised, how many can still be cut on a later day [T14]: those that opened no more than
 * the crop's field days before it [F4], rounded down; none of a tender crop from the frost on [F5], and none where none was forecast. Day numbers.
 */
export function stemsThatWait(planting: PlantingForecast, from: number, until: number, farm: Farm): number {
  const { bed, crop, cutDays, usableStems, opensFrom, openingStems } = planting;
  const place = cutDays.indexOf(from);
  if (place < 0) return 0;
  if (crop.tender && until >= frostDayOf(farm, planting.planting.seasonYear)) return 0;
  const nextPickingDay = pickingDays(farm.pickingWeekdays);
  let opened = 0;
  let fresh = 0;
  for (let day = from; from - day <= crop.fieldDays.count; day--) {
    if (nextPickingDay(day, bed) !== from) break;
    const stems = openingStems[day - opensFrom] ?? 0;
    opened += stems;
    if (until - day <= crop.fieldDays.count) fresh += stems;
  }
  return opened === 0 ? 0 : Math.floor((usableStems[place] * fresh) / opened);
}
