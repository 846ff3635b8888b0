import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import type { AskedBeds } from "./asked-beds";

/** The beds as changes of a what-if: each bed that the farm has otherwise. */
export function changesTo(snapshot: Snapshot, { seasonYear, keptBedIds }: AskedBeds): Change[] {
  const bedIds = new Set(plantingsToChange(snapshot, seasonYear, keptBedIds).map(({ bedId }) => bedId));
  return [...bedIds].map((bedId) => ({ kind: keptBedIds.includes(bedId) ? "bed-kept" : "bed-dug", bedId }));
}
