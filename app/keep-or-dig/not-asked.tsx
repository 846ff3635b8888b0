import { allOf } from "#lib/domain/listed";
import type { Snapshot } from "#lib/domain/snapshot";
import { newlyPlantedBeds } from "#lib/plan/winter/beds";
import { forCount } from "#lib/plan/words/numbers";

/** The beds that are not asked about, since what could stay in them is first planted in spring. */
export function NotAsked({ snapshot, seasonYear }: { snapshot: Snapshot; seasonYear: number }) {
  const beds = newlyPlantedBeds(snapshot, seasonYear);
  if (beds.length === 0) return null;
  return (
    <p className="soft">
      Not asked about: {allOf(beds.map(({ name }) => name))}, first planted in the spring of {seasonYear}. If clumps
      stand in {forCount(beds.length, "it", "them")} now, give their planting the day it was first planted on.
    </p>
  );
}
