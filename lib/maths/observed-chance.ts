/** How often something happened, as a share, and how far from the true chance that is likely to be (a standard deviation). */
export type ObservedChance = { readonly share: number; readonly standardError: number };

/**
 * The chance seen in `happened` of `trialCount` independent trials. The share is as observed; its standard error is reckoned with one more
 * trial either way, so that "never in a hundred" does not claim to be certain.
 * @throws RangeError unless 0 ≤ happened ≤ trialCount and there was a trial
 * Source: binomial variance; the trial either way is Laplace's rule of succession.
 */
export function observedChance(happened: number, trialCount: number): ObservedChance {
  if (!(trialCount > 0 && happened >= 0 && happened <= trialCount))
    throw new RangeError(`happened must lie from 0 to trialCount (at least 1), got ${happened} of ${trialCount}`);
  const share = (happened + 1) / (trialCount + 2);
  return { share: happened / trialCount, standardError: Math.sqrt((share * (1 - share)) / trialCount) };
}
