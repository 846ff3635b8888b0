import type { Planting } from "#lib/domain/records/planting";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { replantedOn } from "#lib/plan/road/grown";
import { DUG, KEPT } from "#lib/plan/winter/beds";
import { type Applied, unchanged, unchangedSinceGone } from "./applied";

/** The farm with all that can overwinter in the bed, in this season, kept in the ground. */
export const keptBed = (now: Snapshot, seasonYear: number, bedId: number): Applied =>
  withWintering(now, seasonYear, bedId, (planting) => ({ ...planting, treatment: KEPT }));

/**
 * The farm with all that can overwinter in the bed, in this season, dug and replanted in spring. A planting that has stood since an earlier
 * year goes back in on the same day of the season's year.
 */
export const dugBed = (now: Snapshot, seasonYear: number, bedId: number): Applied =>
  withWintering(now, seasonYear, bedId, (planting) => ({
    ...planting,
    treatment: DUG,
    plantedOn: replantedOn(planting),
  }));

function withWintering(
  now: Snapshot,
  seasonYear: number,
  bedId: number,
  otherwise: (planting: Planting) => Planting,
): Applied {
  const bed = now.beds.find(({ id }) => id === bedId);
  if (!bed) return unchangedSinceGone(now, "this bed");
  const varieties = new ById("variety", now.varieties);
  const crops = new ById("crop", now.crops);
  let anyChanged = false;
  const plantings = now.plantings.map((planting) => {
    if (planting.bedId !== bedId || planting.seasonYear !== seasonYear) return planting;
    if (!crops.get(varieties.get(planting.varietyId).cropId).overwinters) return planting;
    anyChanged = true;
    return otherwise(planting);
  });
  return anyChanged
    ? { snapshot: { ...now, plantings } }
    : unchanged(now, { kind: "nothing-winters", bedName: bed.name, seasonYear });
}
