import { toDayNumber, yearOf } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Cut } from "#lib/domain/records/cut";
import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { frostDayOf } from "#lib/plan/road/forecast";
import { type Grown, grown } from "#lib/plan/road/grown";
import { replay } from "#lib/plan/road/replay";
import { goodShareOn } from "#lib/plan/road/saleable-share";
import { timingOf } from "./look-timing";
import { readyStems } from "./ready-stems";
import type { CutSeen, TimingSeen, WatchedPlanting } from "./season-model";

/** The part of the variance of a first cut that plantings share where the season cannot be replayed, as in sampled seasons. Our own guess. */
const SHARED_SHARE = 0.5;

/** A planting that is watched, with what its forecast rests on. */
export type WatchedRow = { readonly row: Grown; readonly watched: WatchedPlanting };

/**
 * The plantings of a season that bloom in it, with what was recorded of each. First cuts spread as replayed years do, or by the curve's own spread, half of its
 * variance shared. What was cut of a variety in a bed on a day is one record, whoever it was for; where two plantings of a variety stand in one
 * bed it tells of neither. What the grower says of the season herself is left aside.
 */
export function watchedPlantings(ofFarm: Snapshot, seasonYear: number): WatchedRow[] {
  const snapshot = asCurvesSay(ofFarm);
  const replayed = replay(snapshot, seasonYear);
  const frostDay = frostDayOf(snapshot.farm, seasonYear);
  const rows = grown(snapshot, seasonYear).filter(({ firstCut }) => firstCut !== null);
  const alone = aloneInPlace(rows);
  const cutsOf = cutsByPlanting(snapshot.cuts, alone);
  const looksOf = looksByPlanting(snapshot.budLooks, alone);
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
      timing: looksOf.get(row.planting.id) ?? [],
      cuts: cutsOf.get(row.planting.id) ?? [],
    };
    return { row, watched };
  });
}

/** The farm without what the grower says of the season and what it has shown: that is what records are read against. Rows of which nothing is said stay the same objects. */
export const asCurvesSay = (snapshot: Snapshot): Snapshot => ({
  ...snapshot,
  shown: undefined,
  plantings: snapshot.plantings.map((row) =>
    row.daysLate === null && row.yieldFactor === null ? row : withoutWord(row),
  ),
});

const bareRows = new WeakMap<Planting, Planting>();

function withoutWord(row: Planting): Planting {
  const bare = bareRows.get(row) ?? { ...row, daysLate: null, yieldFactor: null };
  bareRows.set(row, bare);
  return bare;
}

/** The standard deviation of days late whose mean is 0. */
const spreadOf = (late: Int32Array): number =>
  Math.sqrt(late.reduce((sum, days) => sum + days * days, 0) / Math.max(1, late.length));

const place = (bedId: number, varietyId: number): string => `${bedId} ${varietyId}`;

/** The plantings that are the only one of their variety in their bed, by bed and variety. */
function aloneInPlace(rows: readonly Grown[]): Map<string, Grown> {
  const alone = new Map<string, Grown>();
  const met = new Set<string>();
  for (const row of rows) {
    const key = place(row.bed.id, row.variety.id);
    if (met.has(key)) alone.delete(key);
    else alone.set(key, row);
    met.add(key);
  }
  return alone;
}

/**
 * What each planting gave on each day, saleable, as curves count it: good stems where they were counted, else what was cut less the share graded out. A list that was filled says "at least"; where nothing was asked, or
 * less was cut, it was all that was ready.
 */
function cutsByPlanting(cuts: readonly Cut[], alone: ReadonlyMap<string, Grown>): Map<number, CutSeen[]> {
  const byDay = new Map<Grown, Map<number, Cut[]>>();
  for (const cut of cuts) {
    const row = alone.get(place(cut.bedId, cut.varietyId));
    if (!row || yearOf(cut.cutOn) !== row.planting.seasonYear) continue;
    const days = byDay.get(row) ?? new Map<number, Cut[]>();
    byDay.set(row, days);
    const day = toDayNumber(cut.cutOn);
    days.set(day, [...(days.get(day) ?? []), cut]);
  }
  return new Map(
    [...byDay].map(([row, days]) => [
      row.planting.id,
      thatSay([...days]).map(([day, ofDay]) => cutSeen(day, ofDay, goodShareOn(row, day))),
    ]),
  );
}

/** The days of which the record says what was ready: not one on which some was left to stand, nor the next one, which found it again [O2]. */
const thatSay = (days: readonly (readonly [day: number, cuts: readonly Cut[]])[]) => {
  const isLeft = (cuts: readonly Cut[] = []) => cuts.some(({ restStands }) => restStands);
  const inOrder = days.toSorted(([a], [b]) => a - b);
  return inOrder.filter(([, cuts], index) => !isLeft(cuts) && !isLeft(inOrder[index - 1]?.[1]));
};

/** What looks at the buds say of each planting: the last look that judges, and every look at buds not yet open. */
function looksByPlanting(looks: readonly BudLook[], alone: ReadonlyMap<string, Grown>): Map<number, TimingSeen[]> {
  const byPlanting = new Map<number, BudLook[]>();
  for (const look of looks) {
    const row = alone.get(place(look.bedId, look.varietyId));
    if (!row || row.firstCut === null || yearOf(look.lookedOn) !== row.planting.seasonYear) continue;
    byPlanting.set(row.planting.id, [...(byPlanting.get(row.planting.id) ?? []), look]);
  }
  const firstCuts = new Map([...alone.values()].map(({ planting, firstCut }) => [planting.id, firstCut ?? 0]));
  return new Map(
    [...byPlanting].map(([id, ofOne]) => {
      const seen = [...ofOne]
        .sort((a, b) => (a.lookedOn < b.lookedOn ? -1 : 1))
        .map((look) => timingOf(look, firstCuts.get(id) ?? 0));
      // Two judgements of one pair of eyes are not two records: the later one knows what the earlier one knew.
      const last = seen.findLast(({ says }) => says === "came");
      return [id, seen.filter((one) => one === last || one.says === "not yet")];
    }),
  );
}

function cutSeen(day: number, cuts: readonly Cut[], saleableShare: number): CutSeen {
  const stems = cuts.reduce((sum, { stemsCut, goodStems }) => sum + (goodStems ?? stemsCut * saleableShare), 0);
  const cut = cuts.reduce((sum, { stemsCut }) => sum + stemsCut, 0);
  const asked = cuts.reduce((sum, { stemsAsked }) => sum + (stemsAsked ?? Number.POSITIVE_INFINITY), 0);
  return { day, stems: Math.round(stems), says: cut >= asked ? "at least" : "all that was ready" };
}
