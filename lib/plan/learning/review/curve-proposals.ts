import { toDay, yearOf } from "#lib/domain/day";
import type { Crop } from "#lib/domain/records/crop";
import type { BloomCurve } from "#lib/domain/records/curve";
import { type Learned, learnedFor } from "#lib/domain/records/learned";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { frostDayOf } from "#lib/plan/road/forecast";
import { type CurveSeason, curveSeasons } from "./curve-seasons";

/** What a curve would learn from its recorded seasons: before and after, counted from the curve as it stands without anything learned. */
export type CurveProposal = {
  readonly crop: Crop;
  readonly curve: BloomCurve;
  /** Null for the whole crop. */
  readonly varietyName: string | null;
  readonly part: "timing" | "yield";
  readonly was: Omit<Learned, "fromSeason">;
  readonly is: Learned;
  readonly seasons: readonly CurveSeason[];
};

/** Of a planting less than this share of what could be known was seen: that season tells nothing. Our choice. */
const LEAST_SEEN = 0.1;

/** A change of first cuts by fewer days is not worth a question: picking days lie further apart than a day. Our choice. */
const LEAST_DAYS_CHANGE = 2;

/** A change of stems below this share is not worth a question. Our choice. */
const LEAST_YIELD_CHANGE = 0.05;

/**
 * What the curves of a farm would learn from the seasons that were recorded and are over, by crop [V5]. Curves of one planting learn nothing: they are of that
 * season alone.
 * @param today  as a day number; a season is over from its median first frost on
 */
export function curveProposals(snapshot: Snapshot, today: number): CurveProposal[] {
  const crops = new ById("crop", snapshot.crops);
  const varieties = new ById("variety", snapshot.varieties);
  const over = seasonsOver(snapshot, today);
  const seen = over.map((season) => curveSeasons(snapshot, season));
  const fromSeason = (over.at(-1) ?? yearOf(toDay(today))) + 1;
  return snapshot.curves
    .filter(({ plantingId }) => plantingId === null)
    .flatMap((curve) => {
      const seasons = seen.flatMap((ofSeason) => ofSeason.get(curve.id) ?? []);
      const crop = crops.get(curve.cropId);
      const varietyName = curve.varietyId === null ? null : varieties.get(curve.varietyId).name;
      return proposalsOf(curve, seasons, fromSeason).map((one) => ({ crop, varietyName, ...one }));
    })
    .sort((a, b) => a.crop.id - b.crop.id || a.curve.id - b.curve.id);
}

/** The curve as it is once a proposal is taken. */
export const curveWith = ({ curve, is }: Pick<CurveProposal, "curve" | "is">): BloomCurve => ({
  ...curve,
  learned: [...curve.learned.filter(({ fromSeason }) => fromSeason < is.fromSeason), is],
});

type Proposed = Pick<CurveProposal, "curve" | "part" | "was" | "is" | "seasons">;

function proposalsOf(curve: BloomCurve, seasons: readonly CurveSeason[], fromSeason: number): Proposed[] {
  const was = learnedFor(curve, fromSeason);
  const timed = seasons.filter(({ timingSeen }) => timingSeen >= LEAST_SEEN);
  const heavy = seasons.filter(({ yieldSeen }) => yieldSeen >= LEAST_SEEN);
  const laterDays = held(Math.round(learnedDays(timed)), -60, 60);
  const yieldFactor = held(Math.round(learnedFactor(heavy) * 100) / 100, 0.05, 5);
  return [
    ...(timed.length > 0 && Math.abs(laterDays - was.laterDays) >= LEAST_DAYS_CHANGE
      ? [{ curve, part: "timing" as const, was, is: { ...was, fromSeason, laterDays }, seasons: timed }]
      : []),
    ...(heavy.length > 0 && Math.abs(yieldFactor - was.yieldFactor) >= LEAST_YIELD_CHANGE - 1e-9
      ? [{ curve, part: "yield" as const, was, is: { ...was, fromSeason, yieldFactor }, seasons: heavy }]
      : []),
  ];
}

const held = (number: number, least: number, most: number): number => Math.min(most, Math.max(least, number)) + 0;

/**
 * Days late that seasons teach: the curve as it stands weighs as one season on time, each recorded one as much as was seen of it [V5].
 * Source: credibility with k = 1, exact for a normal prior as wide as seasons vary: Bühlmann and Gisler, A Course in Credibility Theory (2005), chapter 3, from memory.
 */
export const learnedDays = (seasons: readonly Pick<CurveSeason, "daysLate" | "timingSeen">[]): number =>
  sumOf(seasons.map(({ daysLate, timingSeen }) => daysLate * timingSeen)) /
  (1 + sumOf(seasons.map(({ timingSeen }) => timingSeen)));

/** Times the stems that seasons teach, weighed in the same way: linear credibility is exact for a gamma prior too. */
export const learnedFactor = (seasons: readonly Pick<CurveSeason, "yieldFactor" | "yieldSeen">[]): number =>
  (1 + sumOf(seasons.map(({ yieldFactor, yieldSeen }) => yieldFactor * yieldSeen))) /
  (1 + sumOf(seasons.map(({ yieldSeen }) => yieldSeen)));

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

/** Seasons with anything cut or looked at that are over, ascending. */
export function seasonsOver({ farm, cuts, budLooks }: Snapshot, today: number): number[] {
  const years = new Set([...cuts.map(({ cutOn }) => yearOf(cutOn)), ...budLooks.map((look) => yearOf(look.lookedOn))]);
  return [...years].filter((year) => frostDayOf(farm, year) <= today).sort((a, b) => a - b);
}
