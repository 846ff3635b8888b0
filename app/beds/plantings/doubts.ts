import type { Problem } from "#lib/domain/problem";
import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { plantingDoubts } from "#lib/plan/words/planting-doubts";
import type { PlantingForm } from "./planting-values";

/** What is doubtful of a planting as its form says it; what was so already before is not asked again. */
export function doubtsOf(
  { planting, newVariety }: PlantingForm,
  before: Planting | undefined,
  snapshot: Snapshot,
): Problem[] {
  const after = doubts(snapshot, { id: before?.id ?? 0, ...planting }, newVariety);
  const known = before ? doubts(snapshot, before, undefined).map(({ message }) => message) : [];
  return after.filter(({ message }) => !known.includes(message));
}

function doubts(snapshot: Snapshot, planting: Planting, newVariety: PlantingForm["newVariety"]): Problem[] {
  const bed = snapshot.beds.find(({ id }) => id === planting.bedId);
  const variety = newVariety
    ? { id: 0, ...newVariety }
    : snapshot.varieties.find(({ id }) => id === planting.varietyId);
  const crop = snapshot.crops.find(({ id }) => id === variety?.cropId);
  return bed && variety && crop ? plantingDoubts(snapshot, { planting, bed, variety, crop }) : [];
}
