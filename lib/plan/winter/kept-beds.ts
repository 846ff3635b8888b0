import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { KEPT, type WinterBed, winterBeds, withKeptBeds } from "./beds";

/** Which candidate beds stay in the ground as the farm has them; a bed of which a part is kept counts as kept. */
export function keptBedTest({ plantings }: Snapshot): (bed: WinterBed) => boolean {
  const kept = new Set(plantings.filter(({ treatment }) => treatment === KEPT).map(({ id }) => id));
  return (bed) => bed.plantings.some((row) => kept.has(row.kept.planting.id));
}

/** The candidate beds of a season that stay in the ground as the farm has them. */
export const bedsKeptNow = (snapshot: Snapshot, seasonYear: number): WinterBed[] =>
  winterBeds(snapshot, seasonYear).filter(keptBedTest(snapshot));

/** The plantings that must change so that these beds are kept and every other candidate is dug, as they would be. */
export function plantingsToChange(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
): readonly Planting[] {
  const before = new Map(snapshot.plantings.map((planting) => [planting.id, planting]));
  return withKeptBeds(snapshot, seasonYear, keptBedIds).plantings.filter((planting) => {
    const was = before.get(planting.id);
    return was?.treatment !== planting.treatment || was.plantedOn !== planting.plantedOn;
  });
}
