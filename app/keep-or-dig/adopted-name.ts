import { allOf } from "#lib/domain/listed";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Change } from "#lib/domain/what-if";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import type { AskedBeds } from "./asked-beds";

/** How many beds the name of the change names before it says how many more there are. */
const NAMED_COUNT = 8;

/** "keep beds D1, D4 and D7 in the ground", as the history of changes calls it. */
export function adoptedName({ beds }: Snapshot, keptBedIds: readonly number[]): string {
  const names = beds.filter(({ id }) => keptBedIds.includes(id)).map(({ name }) => name);
  if (names.length === 0) return "dig every bed";
  const more = names.length - NAMED_COUNT;
  const named = [...names.slice(0, NAMED_COUNT), ...(more > 0 ? [`${more} more`] : [])];
  return `keep ${names.length === 1 ? "bed" : "beds"} ${allOf(named)} in the ground`;
}

/** The beds as changes of a what-if: each bed that the farm has otherwise. */
export function changesTo(snapshot: Snapshot, { seasonYear, keptBedIds }: AskedBeds): Change[] {
  const bedIds = new Set(plantingsToChange(snapshot, seasonYear, keptBedIds).map(({ bedId }) => bedId));
  return [...bedIds].map((bedId) => ({ kind: keptBedIds.includes(bedId) ? "bed-kept" : "bed-dug", bedId }));
}
