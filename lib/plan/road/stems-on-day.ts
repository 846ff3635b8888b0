import { type Day, toDayNumber } from "#lib/domain/day";
import { placeKey } from "./cut-lots";
import type { PlantingForecast } from "./forecast";
import { goodShareOn } from "./saleable-share";

/** Stems that were forecast to be cut on a day, before grading and rounded up, by bed and variety (`placeKey`). Places without any are left out. */
export function stemsOnDay(plantings: readonly PlantingForecast[], day: Day): ReadonlyMap<string, number> {
  const number = toDayNumber(day);
  const stemsAt = new Map<string, number>();
  for (const row of plantings) {
    const stems = row.cutStems[row.cutDays.indexOf(number)];
    const goodShare = goodShareOn(row, number);
    if (!stems || goodShare <= 0) continue;
    const key = placeKey(row.planting);
    stemsAt.set(key, (stemsAt.get(key) ?? 0) + Math.ceil(stems / goodShare - 1e-9));
  }
  return stemsAt;
}
