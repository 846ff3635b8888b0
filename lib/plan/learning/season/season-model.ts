/**
 * What a season is believed to be before anything of it was seen, and how what is seen bears on it [O1]. First cuts: a planting is so many days late as
 * its crop's score times the part of its spread that plantings share, plus its own part; a crop's score is made of the season's, which all crops share, and of its own.
 * Yields: a gamma distribution of mean 1 and the curve's spread, at a score made of the crop's and the planting's own. All scores are standard normal.
 * A picking day finds ready what the curve says, so late and so heavy, with a dispersion about it.
 */

/** The part of the variance of a crop's first cuts that all crops of the season share; the rest is the crop's own. Our own guess: no published figure was found. */
export const SEASON_SHARE = 0.6;

/** The part of the variance of a yield that all plantings of the crop share, as in sampled seasons; the rest is the planting's own. Our own guess. */
export const CROP_YIELD_SHARE = 0.5;

/** What a picking day finds varies about what is expected of it by this share of it, besides the chance of whole stems. Our own guess. */
export const DISPERSION = 0.3;

/** The share of records that the model is not trusted with: a slip of the pen, a day that was cut twice. So no one record can say anything for certain. Our own guess. */
export const UNTRUSTED_SHARE = 0.002;

/** Something that was seen of when a planting comes into bloom: days late (early, when negative) of its first cut against what was expected, and how far that may be wrong. */
export type TimingSeen = {
  readonly says: "came" | "not yet";
  readonly daysLate: number;
  /** One standard deviation; more than 0. */
  readonly spreadDays: number;
};

/** What a picking day gave: as many stems as were ready, or at least so many, since only so many were asked for. */
export type CutSeen = {
  /** As a day number. */
  readonly day: number;
  readonly stems: number;
  readonly says: "all that was ready" | "at least";
};

/** A planting as it is watched through a season. */
export type WatchedPlanting = {
  readonly id: number;
  readonly cropId: number;
  /** One standard deviation of days late that plantings have in common, and of the planting's own. */
  readonly sharedSpreadDays: number;
  readonly ownSpreadDays: number;
  /** The coefficient of variation of its yield. */
  readonly yieldSpread: number;
  /** Stems that a picking day finds ready, not rounded, when the planting is so many days late and yields as expected. */
  readonly readyStems: (day: number, daysLate: number) => number;
  readonly timing: readonly TimingSeen[];
  readonly cuts: readonly CutSeen[];
};
