import { normalQuantile } from "./normal";

const SCORE_OF_P90 = normalQuantile(0.9);

/** A spread told by the values that 10, 50 and 90 in a hundred do not pass, in this order. */
export type TenFiftyNinety = { readonly p10: number; readonly p50: number; readonly p90: number };

/**
 * The value at a standard normal score: a normal distribution with one spread below its median and another above, so that the three
 * given values are met exactly as its quantiles. Between and beyond them it is our assumption.
 */
export function twoPieceNormal({ p10, p50, p90 }: TenFiftyNinety, score: number): number {
  return p50 + (score / SCORE_OF_P90) * (score < 0 ? p50 - p10 : p90 - p50);
}
