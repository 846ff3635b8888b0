import { WINTER_LIKENESS } from "#lib/plan/road/plants-seen";

/**
 * How chance is spread and shared in a sampled season; shares from 0 to 1. First cut and yield have their spreads on the bloom curve, frost its
 * dates on the farm; what is here has no field there.
 */
export type Spreads = {
  /** The part of the variance of first cut, yield and winter that all plantings of a season have in common: the year's. The rest is the planting's own. */
  readonly sharedShare: number;
  /** The same for the winter of beds with wet soil: one soaking winter takes them together. */
  readonly wetSharedShare: number;
  /** How alike the plants of one bed fare in winter: 0 each for itself, towards 1 all or none (the intraclass correlation). */
  readonly winterLikeness: number;
};

/**
 * The built-in spreads. The shared halves, the wet beds' share and the likeness in winter are our own guesses: no published figure was found.
 */
export const DEFAULT_SPREADS: Spreads = {
  sharedShare: 0.5,
  wetSharedShare: 0.9,
  winterLikeness: WINTER_LIKENESS,
};

/** First cuts further from the expected day than so many spreads are held there: one season in 16,000. */
export const SPREADS_AT_MOST = 4;

/** A score made of a shared and an own one, standard normal like both; `sharedShare` is the shared part of its variance. */
export const together = (shared: number, own: number, sharedShare: number): number =>
  Math.sqrt(sharedShare) * shared + Math.sqrt(1 - sharedShare) * own;
