import { type Day, toDayNumber } from "#lib/domain/day";
import { placeKey } from "./cut-lots";
import type { PlantingForecast } from "./forecast";

/** Stems that were forecast to be cut on a day, before grading and rounded up, by bed and variety (`placeKey`). Places without any are left out. */
export function stemsOnDay(plantings: readonly PlantingForecast[], day: Day): ReadonlyMap<string, number> {
  const number = toDayNumber(day);
  const stemsAt = new Map<string, number>();
  for (const { planting, cutDays, cutStems } of plantings) {
    const stems = cutStems[cutDays.indexOf(number)];
    if (!stems || planting.gradeOutShare >= 1) continue;
    const key = placeKey(planting);
    stemsAt.set(key, (stemsAt.get(key) ?? 0) + Math.ceil(stems / (1 - planting.gradeOutShare) - 1e-9));
  }
  return stemsAt;
}
