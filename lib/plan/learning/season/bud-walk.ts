import { toDayNumber } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Grown } from "#lib/plan/road/grown";
import { seasonLesson } from "./season-lesson";
import { watchedPlantings } from "./watched-plantings";

/** A planting to look at: when its first cut is due by all that was seen, as a day number, and the last look at it. */
export type BudWalkStop = { readonly row: Grown; readonly dueDay: number; readonly lastLook: BudLook | null };

/** From so many days before the first cut buds tell something; so long after it a planting without a cut is still worth a look. */
const DAYS_BEFORE = 28;
const DAYS_AFTER = 10;

/** The plantings whose buds are worth a look on a day, in order of bed: due within four weeks, or up to ten days over it, and not cut yet. */
export function budWalk(snapshot: Snapshot, seasonYear: number, today: number): BudWalkStop[] {
  const lesson = seasonLesson(snapshot, seasonYear);
  const cutPlaces = new Set(
    snapshot.cuts
      .filter(
        ({ cutOn, stemsCut }) => stemsCut > 0 && toDayNumber(cutOn) <= today && cutOn.startsWith(String(seasonYear)),
      )
      .map(({ bedId, varietyId }) => `${bedId} ${varietyId}`),
  );
  const saidLate = new Map(snapshot.plantings.map(({ id, daysLate }) => [id, daysLate]));
  return watchedPlantings(snapshot, seasonYear)
    .flatMap(({ row }) => {
      const { id } = row.planting;
      const daysLate = saidLate.get(id) ?? Math.round(lesson?.plantings.get(id)?.daysLate ?? 0);
      const dueDay = (row.firstCut ?? 0) + daysLate;
      const isDue = dueDay - today <= DAYS_BEFORE && today - dueDay <= DAYS_AFTER;
      if (!isDue || cutPlaces.has(`${row.bed.id} ${row.variety.id}`)) return [];
      const looks = snapshot.budLooks
        .filter(({ bedId, varietyId }) => bedId === row.bed.id && varietyId === row.variety.id)
        .filter(({ lookedOn }) => lookedOn.startsWith(String(seasonYear)))
        .sort((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1));
      return [{ row, dueDay, lastLook: looks.at(-1) ?? null }];
    })
    .sort((a, b) => a.row.bed.id - b.row.bed.id || a.row.planting.id - b.row.planting.id);
}
