import { betaShare } from "./beta";
import { logGamma } from "./log-gamma";
import { normalQuantile } from "./normal";

/** The chance of at most `count` successes in `trialCount` trials of chance `share`. Source: NIST DLMF 8.17.5. */
export function binomialShare(count: number, trialCount: number, share: number): number {
  if (count < 0) return 0;
  if (count >= trialCount || share <= 0) return 1;
  if (share >= 1) return 0;
  return betaShare(1 - share, trialCount - count, count + 1);
}

/**
 * The smallest count of successes that at least `chance` of all runs of `trialCount` trials do not pass. A guess from the normal
 * distribution is mended by whole steps, so that a million trials take little longer than ten.
 * @param chance  between 0 and 1, neither included
 */
export function binomialQuantile(chance: number, trialCount: number, share: number): number {
  if (!(chance > 0 && chance < 1)) throw new RangeError(`chance must lie between 0 and 1, got ${chance}`);
  if (share <= 0 || trialCount === 0) return 0;
  if (share >= 1) return trialCount;
  const spread = Math.sqrt(trialCount * share * (1 - share));
  const guess = Math.round(trialCount * share + normalQuantile(chance) * spread);
  let count = Math.min(trialCount, Math.max(0, guess));
  let below = binomialShare(count, trialCount, share);
  let here = chanceOf(count, trialCount, share);
  const odds = share / (1 - share);
  while (below < chance && count < trialCount) {
    here *= (odds * (trialCount - count)) / (count + 1);
    count++;
    below += here;
  }
  while (count > 0 && below - here >= chance) {
    below -= here;
    here *= count / (odds * (trialCount - count + 1));
    count--;
  }
  return count;
}

function chanceOf(count: number, trialCount: number, share: number): number {
  const ways = logGamma(trialCount + 1) - logGamma(count + 1) - logGamma(trialCount - count + 1);
  return Math.exp(ways + count * Math.log(share) + (trialCount - count) * Math.log1p(-share));
}
