import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES, type Role } from "#lib/domain/words";
import { restsOnTheSame } from "#lib/plan/road/forecast";
import type { Grown } from "#lib/plan/road/grown";
import { pickingDays } from "#lib/plan/road/picking-days";
import { type PlantingEvidence, plantingEvidence } from "./planting-evidence";
import { type PlantingPosterior, plantingPosterior } from "./planting-posterior";
import { type Outlook, seasonOutlook } from "./season-outlook";
import { type SeasonPosterior, seasonPosterior } from "./season-posterior";
import { type WatchedRow, watchedPlantings } from "./watched-plantings";

/** What the season has taught of a crop: the mean over its plantings, each by its plants. */
export type CropLesson = {
  readonly crop: Crop;
  readonly daysLate: number;
  readonly yieldFactor: number;
  /** Beds in which anything of it was recorded, of all that grow it. */
  readonly seenBedCount: number;
  readonly bedCount: number;
};

/** What was recorded of a season, read against its forecast [O3]. */
export type SeasonLesson = {
  readonly plantings: ReadonlyMap<number, PlantingPosterior>;
  /** Crops of which anything was recorded, in order of id. */
  readonly crops: readonly CropLesson[];
  readonly posterior: SeasonPosterior;
  readonly rows: readonly WatchedRow[];
};

type Known = { readonly row: Grown; readonly farm: Farm; readonly seen: string; readonly evidence: PlantingEvidence };

/** The evidence of each planting that was weighed last: a tap weighs one planting anew. */
const known = new WeakMap<Planting, Known>();

/** What a season has taught so far; null while nothing of it was recorded. */
export function seasonLesson(snapshot: Snapshot, seasonYear: number): SeasonLesson | null {
  const rows = watchedPlantings(snapshot, seasonYear);
  if (rows.every(({ watched }) => watched.cuts.length === 0 && watched.timing.length === 0)) return null;
  const posterior = seasonPosterior(rows.map((row) => evidenceOf(row, snapshot.farm)));
  const plantings = new Map(
    posterior.crops.flatMap((crop) =>
      crop.evidence.map((evidence) => [evidence.planting.id, plantingPosterior(evidence, crop)] as const),
    ),
  );
  return { plantings, crops: cropLessons(rows, plantings), posterior, rows };
}

function evidenceOf({ row, watched }: WatchedRow, farm: Farm): PlantingEvidence {
  const { sharedSpreadDays, timing, cuts } = watched;
  const seen = JSON.stringify([sharedSpreadDays, timing, cuts]);
  const found = known.get(row.planting);
  if (found && found.seen === seen && found.farm === farm && restsOnTheSame(found.row, row)) return found.evidence;
  const evidence = plantingEvidence(watched);
  known.set(row.planting, { row, farm, seen, evidence });
  return evidence;
}

function cropLessons(rows: readonly WatchedRow[], plantings: ReadonlyMap<number, PlantingPosterior>): CropLesson[] {
  const crops = [...new Map(rows.map(({ row }) => [row.crop.id, row.crop])).values()].sort((a, b) => a.id - b.id);
  return crops.flatMap((crop) => {
    const ofCrop = rows.filter(({ row }) => row.crop.id === crop.id);
    const seen = ofCrop.filter(({ watched }) => watched.cuts.length > 0 || watched.timing.length > 0);
    if (seen.length === 0) return [];
    const mean = (of: (posterior: PlantingPosterior) => number) => {
      let sum = 0;
      let weights = 0;
      for (const { row } of ofCrop) {
        const posterior = plantings.get(row.planting.id);
        if (!posterior) continue;
        sum += row.planting.plantCount * of(posterior);
        weights += row.planting.plantCount;
      }
      return weights === 0 ? 0 : sum / weights;
    };
    const beds = (all: readonly WatchedRow[]) => new Set(all.map(({ row }) => row.bed.id)).size;
    return [
      {
        crop,
        daysLate: mean(({ daysLate }) => daysLate),
        yieldFactor: mean(({ yieldFactor }) => yieldFactor),
        seenBedCount: beds(seen),
        bedCount: beds(ofCrop),
      },
    ];
  });
}

/** What is to be expected of the four weeks from a day on, role by role [O4]; one outlook a week, for roles of which anything may come. */
export function weeksAhead(lesson: SeasonLesson, snapshot: Snapshot, today: number): Map<Role, Outlook[]> {
  const next = pickingDays(snapshot.farm.pickingWeekdays);
  const weeks = [0, 1, 2, 3].map((week) =>
    Array.from({ length: 7 }, (_, index) => today + 7 * week + index).filter(
      (day) => next(day, { noEntryFrom: null, noEntryUntil: null }) === day,
    ),
  );
  const rolesOf = new Map(lesson.rows.map(({ row }) => [row.planting.id, row.crop.usualRole]));
  const outlooks = seasonOutlook(
    lesson.posterior,
    (id) => {
      const role = rolesOf.get(id);
      return role ? [role] : [];
    },
    weeks,
  );
  return new Map(ROLES.flatMap((role) => (outlooks.has(role) ? [[role, outlooks.get(role) ?? []] as const] : [])));
}
