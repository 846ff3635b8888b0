import { toDayNumber } from "#lib/domain/day";
import type { Cut } from "#lib/domain/records/cut";
import type { Snapshot } from "#lib/domain/snapshot";
import { frostDayOf } from "#lib/plan/road/forecast";
import { type Grown, grown } from "#lib/plan/road/grown";
import { replay } from "#lib/plan/road/replay";
import { readyStems } from "./ready-stems";
import type { CutSeen, WatchedPlanting } from "./season-model";

/** The part of the variance of a first cut that plantings share where the season cannot be replayed, as in sampled seasons. Our own guess. */
const SHARED_SHARE = 0.5;

/** A planting that is watched, with what its forecast rests on. */
export type WatchedRow = { readonly row: Grown; readonly watched: WatchedPlanting };

/**
 * The plantings of a season that bloom in it, with what was recorded of each. First cuts spread as replayed years do, or by the curve's own spread, half of its
 * variance shared. What was cut of a variety in a bed on a day is one record, whoever it was for; where two plantings of a variety stand in one
 * bed it tells of neither.
 */
export function watchedPlantings(snapshot: Snapshot, seasonYear: number): WatchedRow[] {
  const replayed = replay(snapshot, seasonYear);
  const frostDay = frostDayOf(snapshot.farm, seasonYear);
  const rows = grown(snapshot, seasonYear).filter(({ firstCut }) => firstCut !== null);
  const cutsOf = cutsByPlanting(snapshot.cuts, rows);
  return rows.map((row) => {
    const ownSpreadDays = (row.curve?.firstCutSpreadDays ?? 0) * Math.sqrt(1 - SHARED_SHARE);
    const late = replayed?.daysLateOf(row);
    const watched = {
      id: row.planting.id,
      cropId: row.crop.id,
      sharedSpreadDays: late ? spreadOf(late) : (row.curve?.firstCutSpreadDays ?? 0) * Math.sqrt(SHARED_SHARE),
      ownSpreadDays,
      yieldSpread: row.curve?.yieldSpread ?? 0,
      readyStems: readyStems(row, snapshot.farm, frostDay),
      timing: [],
      cuts: cutsOf.get(row.planting.id) ?? [],
    };
    return { row, watched };
  });
}

/** The standard deviation of days late whose mean is 0. */
const spreadOf = (late: Int32Array): number =>
  Math.sqrt(late.reduce((sum, days) => sum + days * days, 0) / Math.max(1, late.length));

const place = (bedId: number, varietyId: number): string => `${bedId} ${varietyId}`;

/**
 * What each planting gave on each day, before grading brought to what is saleable, as curves count it. A list that asked for less than was cut, or as much, says "at least"; where nothing was asked, or less was cut,
 * it was all that was ready.
 */
function cutsByPlanting(cuts: readonly Cut[], rows: readonly Grown[]): Map<number, CutSeen[]> {
  const inPlace = new Map<string, Grown[]>();
  for (const row of rows) {
    const key = place(row.bed.id, row.variety.id);
    inPlace.set(key, [...(inPlace.get(key) ?? []), row]);
  }
  const byDay = new Map<number, Map<number, Cut[]>>();
  for (const cut of cuts) {
    const [row, another] = inPlace.get(place(cut.bedId, cut.varietyId)) ?? [];
    if (!row || another || yearOfCut(cut) !== row.planting.seasonYear) continue;
    const days = byDay.get(row.planting.id) ?? new Map<number, Cut[]>();
    byDay.set(row.planting.id, days);
    const day = toDayNumber(cut.cutOn);
    days.set(day, [...(days.get(day) ?? []), cut]);
  }
  const gradeOutOf = new Map(rows.map(({ planting }) => [planting.id, planting.gradeOutShare]));
  return new Map(
    [...byDay].map(([id, days]) => [
      id,
      [...days].map(([day, ofDay]) => cutSeen(day, ofDay, 1 - (gradeOutOf.get(id) ?? 0))),
    ]),
  );
}

const yearOfCut = ({ cutOn }: Cut): number => Number(cutOn.slice(0, 4));

function cutSeen(day: number, cuts: readonly Cut[], saleableShare: number): CutSeen {
  const stems = cuts.reduce((sum, { stemsCut, goodStems }) => sum + (goodStems ?? stemsCut * saleableShare), 0);
  const cut = cuts.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
  const asked = cuts.reduce((sum, { stemsAsked }) => sum + (stemsAsked ?? Number.POSITIVE_INFINITY), 0);
  return { day, stems: Math.round(stems), says: cut >= asked ? "at least" : "all that was ready" };
}
