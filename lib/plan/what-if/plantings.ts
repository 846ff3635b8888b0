import type { Planting, PlantingDraft } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ChangeOf } from "#lib/domain/what-if";
import { type Applied, newId, unchanged, unchangedSinceGone, withoutRow, withRow } from "./applied";

/** The farm with one planting more. Refused when its bed or its variety is gone. */
export function addedPlanting(now: Snapshot, before: Snapshot, draft: PlantingDraft): Applied {
  if (!now.beds.some(({ id }) => id === draft.bedId)) return unchangedSinceGone(now, "the bed to plant");
  if (!now.varieties.some(({ id }) => id === draft.varietyId)) return unchangedSinceGone(now, "the variety to plant");
  const planting: Planting = { id: newId(now.plantings, before.plantings), ...draft };
  return { snapshot: { ...now, plantings: [...now.plantings, planting] } };
}

/** The farm with a planting in another bed, or planted on another day. What stays in the ground cannot change its bed. */
export function movedPlanting(now: Snapshot, { plantingId, bedId, plantedOn }: ChangeOf<"planting-moved">): Applied {
  const planting = now.plantings.find(({ id }) => id === plantingId);
  if (!planting) return unchangedSinceGone(now, "this planting");
  if (bedId !== null && !now.beds.some(({ id }) => id === bedId))
    return unchangedSinceGone(now, "the bed to move it to");
  if (bedId !== null && bedId !== planting.bedId && planting.treatment === "kept-in-ground")
    return unchanged(now, { kind: "stays-in-the-ground" });
  const moved = { ...planting, bedId: bedId ?? planting.bedId, plantedOn: plantedOn ?? planting.plantedOn };
  return { snapshot: { ...now, plantings: withRow(now.plantings, plantingId, () => moved) } };
}

/** The farm without the planting. */
export function removedPlanting(now: Snapshot, plantingId: number): Applied {
  if (!now.plantings.some(({ id }) => id === plantingId)) return unchangedSinceGone(now, "this planting");
  return { snapshot: { ...now, plantings: withoutRow(now.plantings, plantingId) } };
}
