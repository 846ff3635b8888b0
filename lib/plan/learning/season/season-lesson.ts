import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Planting } from "#lib/domain/records/planting";
import type { ShownSeason, Snapshot } from "#lib/domain/snapshot";
import { ROLES, type Role } from "#lib/domain/words";
import { restsOnTheSame } from "#lib/plan/road/forecast";
import type { Grown } from "#lib/plan/road/grown";
import { pickingDays } from "#lib/plan/road/picking-days";
import { type PlantingEvidence, plantingEvidence } from "./planting-evidence";
import { type PlantingPosterior, plantingPosterior } from "./planting-posterior";
import type { CutSeen } from "./season-model";
import { type Outlook, seasonOutlook } from "./season-outlook";
import { type SeasonPosterior, seasonPosterior } from "./season-posterior";
import { type WatchedRow, watchedPlantings } from "./watched-plantings";

/** What the season has taught of a crop: the mean over its plantings, each by its plants, of the days most believed and of the mean yield. */
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

type Known = { readonly row: Grown; readonly farm: Farm; readonly bySeen: Map<string, PlantingEvidence> };

/** The evidence of each planting that was weighed last: a tap weighs one planting anew. */
const known = new WeakMap<Planting, Known>();

/** What a season has taught so far; null while nothing of it was recorded. */
export function seasonLesson(snapshot: Snapshot, seasonYear: number): SeasonLesson | null {
  const rows = watchedPlantings(snapshot, seasonYear);
  return rows.some(wasSeen) ? lessonOf(rows, snapshot.farm) : null;
}

const wasSeen = ({ watched: { cuts, timing } }: WatchedRow): boolean => cuts.length > 0 || timing.length > 0;

/**
 * What a season says by what was measured of it alone, looks and cuts of all that was ready, and by all that was recorded, with the cuts that filled their lists.
 * Null while nothing was measured.
 */
export function measuredLesson(
  snapshot: Snapshot,
  seasonYear: number,
): { readonly measured: SeasonLesson; readonly all: SeasonLesson } | null {
  const rows = watchedPlantings(snapshot, seasonYear);
  const measured = rows.map((one) => ({
    ...one,
    watched: { ...one.watched, cuts: one.watched.cuts.filter(wasAllReady) },
  }));
  if (!measured.some(wasSeen)) return null;
  return { measured: lessonOf(measured, snapshot.farm), all: lessonOf(rows, snapshot.farm) };
}

function lessonOf(rows: readonly WatchedRow[], farm: Farm): SeasonLesson {
  const { posterior, plantings } = believed(rows.map((row) => evidenceOf(row, farm)));
  return { plantings, crops: cropLessons(rows, plantings), posterior, rows };
}

type Believed = {
  readonly evidence: readonly PlantingEvidence[];
  readonly posterior: SeasonPosterior;
  readonly plantings: ReadonlyMap<number, PlantingPosterior>;
};

/** What was believed last of a season, by the evidence of its first planting: a season of which nothing was recorded since is not weighed again. */
const lately = new WeakMap<PlantingEvidence, readonly Believed[]>();
/** What is shown, what is reckoned with, and what was measured. */
const KEPT_COUNT = 3;

function believed(evidence: readonly PlantingEvidence[]): Believed {
  const kept = (evidence.length > 0 && lately.get(evidence[0])) || [];
  const isSame = (one: Believed) =>
    one.evidence.length === evidence.length && one.evidence.every((each, at) => each === evidence[at]);
  const found = kept.find(isSame);
  if (found) return found;
  const posterior = seasonPosterior(evidence);
  const plantings = new Map(
    posterior.crops.flatMap((crop) =>
      crop.evidence.map((each) => [each.planting.id, plantingPosterior(each, crop)] as const),
    ),
  );
  const made = { evidence, posterior, plantings };
  if (evidence.length > 0) lately.set(evidence[0], [made, ...kept].slice(0, KEPT_COUNT));
  return made;
}

/** The plan reckons with stems to a twentieth of what the curve says, so that it does not shake with every cut. Our own choice. */
const YIELD_STEPS = 20;
/** Picking days lie further apart than a day: fewer days early or late than this are no news. Our own choice. */
const LEAST_DAYS = 2;

/**
 * What the plan reckons with of what a season has shown [O5]: days late by the whole day, stems by the twentieth, of the plantings that this moves. Of a crop
 * of which lists were filled and nothing measured no more is believed than of one that nobody looked at, and of one that was only looked at no other
 * stems than expected: that there were at least so many is no news. Null where nothing is moved.
 */
export function shownSeason(snapshot: Snapshot, seasonYear: number): ShownSeason | null {
  const rows = watchedPlantings(snapshot, seasonYear);
  const measured = cropsOf(rows, ({ watched: { cuts, timing } }) => cuts.some(wasAllReady) || timing.length > 0);
  if (measured.size === 0) return null;
  const counted = cropsOf(rows, ({ watched: { cuts } }) => cuts.some(wasAllReady));
  const { plantings } = lessonOf(
    rows.map((one) =>
      measured.has(one.row.crop.id) ? one : { ...one, watched: { ...one.watched, cuts: [], timing: [] } },
    ),
    snapshot.farm,
  );
  const shown = rows.flatMap(({ row }) => {
    const believed = plantings.get(row.planting.id);
    if (!believed) return [];
    const days = Math.round(believed.likeliestDaysLate);
    const daysLate = Math.abs(days) < LEAST_DAYS ? 0 : days;
    const yieldFactor = counted.has(row.crop.id) ? Math.round(believed.yieldFactor * YIELD_STEPS) / YIELD_STEPS : 1;
    return daysLate === 0 && yieldFactor === 1 ? [] : [[row.planting.id, { daysLate, yieldFactor }] as const];
  });
  return shown.length === 0 ? null : new Map(shown);
}

/** The ids of the crops of which some planting is so. */
const cropsOf = (rows: readonly WatchedRow[], isSo: (row: WatchedRow) => boolean): Set<number> =>
  new Set(rows.filter(isSo).map(({ row }) => row.crop.id));

const wasAllReady = ({ says }: CutSeen): boolean => says === "all that was ready";

function evidenceOf({ row, watched }: WatchedRow, farm: Farm): PlantingEvidence {
  const { sharedSpreadDays, timing, cuts } = watched;
  const seen = JSON.stringify([sharedSpreadDays, timing, cuts]);
  const found = known.get(row.planting);
  const bySeen = found && found.farm === farm && restsOnTheSame(found.row, row) ? found.bySeen : new Map();
  const evidence: PlantingEvidence = bySeen.get(seen) ?? plantingEvidence(watched);
  // What is shown, what is reckoned with and what was measured may weigh a planting differently: all three are kept.
  if (bySeen.size > 2 && !bySeen.has(seen)) bySeen.clear();
  known.set(row.planting, { row, farm, bySeen: bySeen.set(seen, evidence) });
  return evidence;
}

function cropLessons(rows: readonly WatchedRow[], plantings: ReadonlyMap<number, PlantingPosterior>): CropLesson[] {
  const crops = [...new Map(rows.map(({ row }) => [row.crop.id, row.crop])).values()].sort((a, b) => a.id - b.id);
  return crops.flatMap((crop) => {
    const ofCrop = rows.filter(({ row }) => row.crop.id === crop.id);
    const seen = ofCrop.filter(wasSeen);
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
        daysLate: mean(({ likeliestDaysLate }) => likeliestDaysLate),
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
