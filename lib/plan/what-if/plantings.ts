import type { Planting, PlantingDraft } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ChangeOf } from "#lib/domain/what-if";
import { type Applied, newId, unchanged, withoutRow, withRow } from "./applied";

const GONE = "this planting is no longer on the farm";

/** The farm with one planting more. Refused when its bed or its variety is gone. */
export function addedPlanting(now: Snapshot, before: Snapshot, draft: PlantingDraft): Applied {
  if (!now.beds.some(({ id }) => id === draft.bedId))
    return unchanged(now, "the bed to plant is no longer on the farm");
  if (!now.varieties.some(({ id }) => id === draft.varietyId))
    return unchanged(now, "the variety to plant is no longer on the farm");
  const planting: Planting = { id: newId(now.plantings, before.plantings), ...draft };
  return { snapshot: { ...now, plantings: [...now.plantings, planting] } };
}

/** The farm with a planting in another bed, or planted on another day. What stays in the ground cannot change its bed. */
export function movedPlanting(now: Snapshot, { plantingId, bedId, plantedOn }: ChangeOf<"planting-moved">): Applied {
  const planting = now.plantings.find(({ id }) => id === plantingId);
  if (!planting) return unchanged(now, GONE);
  if (bedId !== null && !now.beds.some(({ id }) => id === bedId))
    return unchanged(now, "the bed to move it to is no longer on the farm");
  if (bedId !== null && bedId !== planting.bedId && planting.treatment === "kept-in-ground")
    return unchanged(now, "this planting stays in the ground over winter: dig its bed before moving it to another");
  const moved = { ...planting, bedId: bedId ?? planting.bedId, plantedOn: plantedOn ?? planting.plantedOn };
  return { snapshot: { ...now, plantings: withRow(now.plantings, plantingId, () => moved) } };
}

/** The farm without the planting. */
export function removedPlanting(now: Snapshot, plantingId: number): Applied {
  if (!now.plantings.some(({ id }) => id === plantingId)) return unchanged(now, GONE);
  return { snapshot: { ...now, plantings: withoutRow(now.plantings, plantingId) } };
}
