import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { sameDayIn, yearOf } from "#lib/domain/day";
import type { CurveDraft } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { PlantingDraft, PlantingFlag } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { alivePlants, type Grown, grown, replantedPlants } from "#lib/plan/road/grown";
import { countedShare, shareLeft } from "#lib/plan/road/plants-seen";

/** The latest season before a year that has plantings; null when there is none. */
export function seasonBefore({ plantings }: Snapshot, seasonYear: number): number | null {
  const earlier = plantings.map((planting) => planting.seasonYear).filter((year) => year < seasonYear);
  return earlier.length ? earlier.reduce((a, b) => Math.max(a, b)) : null;
}

/** A planting as it would stand in another season, with the bloom curves that are its alone. */
type CarriedPlanting = PlantingDraft & { readonly ownCurves: readonly Omit<CurveDraft, "plantingId">[] };

/**
 * The plantings of a season as they would stand in another, each with the curves of its own: what was learned of it stays with it. What lives on keeps the day it was planted and grows older, and goes on with the plants
 * still alive: it is kept in the ground over winter, or its curve has stems by age; of a curve of the grower's own, what grows in the field and blooms on a
 * day of the year, unless the built-in curve of that crop lives one season. All else, annuals and bulbs of one season, is planted anew on the same day of the year.
 * A variety that the bed has in the other season already is left out.
 */
export function carriedPlantings(snapshot: Snapshot, fromSeason: number, toSeason: number): CarriedPlanting[] {
  const there = new Set(
    snapshot.plantings.filter((row) => row.seasonYear === toSeason).map((row) => `${row.bedId} ${row.varietyId}`),
  );
  return grown(snapshot, fromSeason)
    .filter(({ planting }) => !there.has(`${planting.bedId} ${planting.varietyId}`))
    .map((row) => {
      const { id, ...stood } = row.planting;
      // What was said of one season is of that one.
      const planted = { ...stood, daysLate: null, yieldFactor: null };
      const draft = { ...planted, ownCurves: ownCurvesOf(snapshot, id) };
      if (!stays(row))
        return {
          ...draft,
          seasonYear: toSeason,
          ageSeasons: draft.ageSeasons === null ? null : 1,
          plantedOn: sameDayIn(draft.plantedOn, yearOf(draft.plantedOn) + toSeason - fromSeason),
        };
      // What stayed goes on with the plants that came through and those set in the places of the dead, not with those once set out.
      return {
        ...draft,
        seasonYear: toSeason,
        plantCount: Math.round(plantsStanding(row, snapshot.farm)),
        aliveShare: 1,
        ageSeasons: draft.ageSeasons === null ? null : draft.ageSeasons + toSeason - fromSeason,
        flags: crowdedBy(draft, toSeason - fromSeason) ? [...draft.flags, CROWDED] : draft.flags,
      };
    });
}

/** Plants that stand at the end of a season: those that came through and those set in the places of the dead, less what was lost of them since [PL1]. */
function plantsStanding({ planting, seen }: Grown, farm: Farm): number {
  const counted = countedShare(seen);
  const plants = alivePlants(planting, farm, counted) + replantedPlants(planting, farm, counted);
  return plants * shareLeft(seen.losses, Number.POSITIVE_INFINITY);
}

const ownCurvesOf = ({ curves }: Snapshot, plantingId: number): CarriedPlanting["ownCurves"] =>
  curves.filter((curve) => curve.plantingId === plantingId).map(({ id: _, plantingId: _of, ...curve }) => curve);

/** Clumps that would stand in the ground for more winters than this are lifted by default: they crowd after two or three (from memory). */
const WINTERS_AT_MOST = 3;
const CROWDED: PlantingFlag = "old crowded clumps";

/** A kept clump in season n of its life has stood n − 1 winters. One whose age nobody has told is left to the grower's eye. */
const crowdedBy = ({ treatment, ageSeasons, flags }: PlantingDraft, seasonCount: number): boolean =>
  treatment === "kept-in-ground" &&
  ageSeasons !== null &&
  ageSeasons + seasonCount - 1 > WINTERS_AT_MOST &&
  !flags.includes(CROWDED);

function stays({ planting: { treatment }, crop, curve }: Grown): boolean {
  if (treatment === "kept-in-ground" || (curve && curve.shareByAge.length > 0)) return true;
  if (treatment !== "field" || curve?.anchor.kind !== "day-of-year") return false;
  const builtIn = CATALOGUE.find(({ name }) => name === crop.name);
  return builtIn?.curves.every(({ shareByAge }) => shareByAge.length > 0) ?? true;
}
