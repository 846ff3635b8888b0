import { betaShare } from "./beta";
import { logGamma } from "./log-gamma";

/**
 * The natural logarithm of the chance of `count` under a negative binomial distribution of a mean and a size: a Poisson count whose own mean is gamma
 * with that mean and the shape `size`, so that its variance is mean + mean² / size. As a function of the mean, since many means are tried for one count.
 * @param count  a whole number, 0 or more
 * @param size   above 0
 * Source: Johnson, Kemp and Kotz, "Univariate Discrete Distributions", 3rd edition, 2005, 5.1, in the form of mean and size.
 */
export function logChanceOf(count: number, size: number): (mean: number) => number {
  const ways = logGamma(count + size) - logGamma(count + 1) - logGamma(size);
  const none = size * Math.log(size);
  return (mean) => {
    if (mean <= 0) return count === 0 ? 0 : Number.NEGATIVE_INFINITY;
    return ways + none + count * Math.log(mean) - (count + size) * Math.log(mean + size);
  };
}

/** The chance of `count` or more under the same distribution. Source: NIST DLMF 8.17.5, by the incomplete beta function. */
export const chanceOfAtLeast = (count: number, mean: number, size: number): number => {
  if (count <= 0) return 1;
  return mean <= 0 ? 0 : betaShare(mean / (mean + size), count, size);
};
