import { learnedFor, NOTHING_LEARNED } from "#lib/domain/records/learned";
import type { Snapshot } from "#lib/domain/snapshot";
import type { PlantingPosterior } from "../season/planting-posterior";
import { measuredLesson, type SeasonLesson } from "../season/season-lesson";
import type { WatchedRow } from "../season/watched-plantings";

/**
 * What a recorded season says of a curve, against the curve as it stands without anything learned: believed days late and times the stems, and how
 * much was seen of either, from 0 (nothing was measured) to 1 (as good as all).
 */
export type CurveSeason = {
  readonly season: number;
  readonly daysLate: number;
  readonly timingSeen: number;
  readonly yieldFactor: number;
  readonly yieldSeen: number;
};

/** What the seasons of a farm said, by season: a farm that was not changed is not weighed again. */
const known = new WeakMap<Snapshot, Map<number, ReadonlyMap<number, CurveSeason>>>();

/** What a season says of each curve, by its id: the mean over the plantings that bloomed by it, each by its plants [V5]. */
export function curveSeasons(snapshot: Snapshot, season: number): ReadonlyMap<number, CurveSeason> {
  const bySeason = known.get(snapshot) ?? new Map<number, ReadonlyMap<number, CurveSeason>>();
  known.set(snapshot, bySeason);
  const said = bySeason.get(season) ?? weighed(snapshot, season);
  bySeason.set(season, said);
  return said;
}

function weighed(snapshot: Snapshot, season: number): Map<number, CurveSeason> {
  const lesson = measuredLesson(snapshot, season);
  if (lesson === null) return new Map();
  const rowsOf = new Map<number, WatchedRow[]>();
  for (const row of lesson.measured.rows) {
    const id = row.row.curve?.id;
    if (id !== undefined) rowsOf.set(id, [...(rowsOf.get(id) ?? []), row]);
  }
  return new Map([...rowsOf].map(([id, rows]) => [id, { season, ...meanOf(rows, lesson.measured, lesson.all) }]));
}

/** The mean over the plantings of one curve; of a part that was measured of none of them nothing was seen. */
function meanOf(rows: readonly WatchedRow[], measured: SeasonLesson, all: SeasonLesson): Omit<CurveSeason, "season"> {
  const said = rows.flatMap((row) => {
    const [ofMeasured, ofAll] = [measured, all].map(({ plantings }) => plantings.get(row.row.planting.id));
    return ofMeasured && ofAll ? [{ plants: row.row.planting.plantCount, ...saidOf(row, ofMeasured, ofAll) }] : [];
  });
  const plants = said.reduce((sum, one) => sum + one.plants, 0);
  const mean = (of: (one: (typeof said)[number]) => number) =>
    plants === 0 ? 0 : said.reduce((sum, one) => sum + one.plants * of(one), 0) / plants;
  const wasTimed = rows.some(({ watched: { cuts, timing } }) => cuts.length > 0 || timing.length > 0);
  const wasCounted = rows.some(({ watched: { cuts } }) => cuts.length > 0);
  const timingSeen = wasTimed ? mean((one) => one.timingSeen) : 0;
  const yieldSeen = wasCounted ? mean((one) => one.yieldSeen) : 0;
  return {
    timingSeen,
    yieldSeen,
    daysLate: timingSeen === 0 ? 0 : mean((one) => one.timingSeen * one.daysLate) / timingSeen,
    yieldFactor: yieldSeen === 0 ? 1 : mean((one) => one.yieldSeen * one.yieldFactor) / yieldSeen,
  };
}

/**
 * What was seen of a planting by itself. What is believed of it lies between its forecast and what was seen, as near to this as the belief has
 * become narrower: so what was seen is found again. The variance of a yield is told beside its mean, as a gamma belief grows wider with it: what remains is exact
 * for a gamma prior (credibility, see `learnedFactor`).
 */
function saidOf({ row, watched }: WatchedRow, measured: PlantingPosterior, all: PlantingPosterior) {
  const { curve, planting } = row;
  const spreadDays = Math.hypot(watched.sharedSpreadDays, watched.ownSpreadDays);
  const timed = drawnTo(0, timingOf(measured), timingOf(all));
  const heavy = drawnTo(1, yieldOf(measured), yieldOf(all));
  const timingSeen = seenOf(timed.variance, spreadDays ** 2);
  const yieldSeen = seenOf(heavy.variance / Math.max(heavy.mean, LEAST_FACTOR), watched.yieldSpread ** 2);
  const { laterDays, yieldFactor } = curve ? learnedFor(curve, planting.seasonYear) : NOTHING_LEARNED;
  return {
    timingSeen,
    yieldSeen,
    daysLate: laterDays + (timingSeen === 0 ? 0 : timed.mean / timingSeen),
    yieldFactor: yieldFactor * (yieldSeen === 0 ? 1 : Math.max(0, 1 + (heavy.mean - 1) / yieldSeen)),
  };
}

/** The least times the stems that any curve learns. */
const LEAST_FACTOR = 0.05;

type Belief = { readonly mean: number; readonly variance: number };
const timingOf = ({ daysLate, daysLateSpread }: PlantingPosterior): Belief => ({
  mean: daysLate,
  variance: daysLateSpread ** 2,
});
const yieldOf = ({ yieldFactor, yieldFactorSpread }: PlantingPosterior): Belief => ({
  mean: yieldFactor,
  variance: yieldFactorSpread ** 2,
});

/**
 * What was measured, drawn back towards the forecast by the lists that were filled: these say only that there were at least so many, so that they take
 * back what a short cut said, and never move a curve by themselves.
 */
function drawnTo(forecast: number, measured: Belief, all: Belief): Belief {
  const side = Math.sign(measured.mean - forecast);
  if (side * (all.mean - measured.mean) >= 0) return measured;
  return side * (all.mean - forecast) >= 0 ? all : { ...all, mean: forecast };
}

const seenOf = (variance: number, before: number): number =>
  before === 0 ? 0 : Math.min(1, Math.max(0, 1 - variance / before));
