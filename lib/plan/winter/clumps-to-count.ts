import { toDayNumber } from "#lib/domain/day";
import type { LossCause } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { type Grown, grown } from "#lib/plan/road/grown";
import { firstDayOf } from "#lib/plan/road/usual-year";
import { DUG, KEPT } from "./beds";

/** A planting whose clumps came through a winter, or did not, and were not counted yet. */
export type ClumpsToCount = { readonly row: Grown; readonly cause: Extract<LossCause, `winter ${string}`> };

/** From so many days after New Year clumps are uncovered and taken out of store: 1 March. */
const DAYS_INTO_YEAR = 59;
/** So long after they went back in, what came out of the store is still known. */
const DAYS_AFTER_PLANTING = 28;

/**
 * Clumps that can be counted on a day, in order of planting: those kept in the ground until their first cut, and those set again of a crop that overwinters, of a variety
 * that grew in the season before, until four weeks after they went back in. Each once a season.
 * @param today  as a day number
 */
export function clumpsToCount(snapshot: Snapshot, seasonYear: number, today: number): ClumpsToCount[] {
  if (today < firstDayOf(seasonYear) + DAYS_INTO_YEAR) return [];
  const counted = new Set(
    snapshot.losses
      .filter(({ seenOn }) => seenOn.startsWith(`${seasonYear}-`))
      .map(({ bedId, varietyId, cause }) => `${bedId} ${varietyId} ${cause}`),
  );
  const grewBefore = new Set(
    snapshot.plantings.filter((row) => row.seasonYear === seasonYear - 1).map(({ varietyId }) => varietyId),
  );
  return grown(snapshot, seasonYear).flatMap((row): ClumpsToCount[] => {
    const { planting, crop, firstCut } = row;
    const isNew = (cause: LossCause) => !counted.has(`${planting.bedId} ${planting.varietyId} ${cause}`);
    if (planting.plantCount === 0) return [];
    if (planting.treatment === KEPT)
      return isNew("winter in the ground") && today < (firstCut ?? today)
        ? [{ row, cause: "winter in the ground" }]
        : [];
    const wasStored = planting.treatment === DUG && crop.overwinters && grewBefore.has(planting.varietyId);
    const isStillKnown = today <= toDayNumber(planting.plantedOn) + DAYS_AFTER_PLANTING;
    return wasStored && isStillKnown && isNew("winter in store") ? [{ row, cause: "winter in store" }] : [];
  });
}
