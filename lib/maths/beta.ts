import { inverseShare } from "./inverse-share";
import { logGamma } from "./log-gamma";

const TERMS_AT_MOST = 100_000;
const TINY = 1e-300;

/**
 * The share of a beta distribution that lies below `point`: the regularised incomplete beta function, by its continued fraction
 * (modified Lentz).
 * @param point  from 0 to 1
 * @param a      above 0
 * @param b      above 0; the mean is a / (a + b)
 * Source: NIST Digital Library of Mathematical Functions, 8.17.22.
 */
export function betaShare(point: number, a: number, b: number): number {
  if (!(a > 0 && b > 0)) throw new RangeError(`a and b must be above 0, got ${a} and ${b}`);
  if (point <= 0) return 0;
  if (point >= 1) return 1;
  const front = Math.exp(a * Math.log(point) + b * Math.log1p(-point) - logBeta(a, b));
  /** The fraction converges fast on the near side of the mean; the far side is the same with the roles changed. */
  return point < (a + 1) / (a + b + 2)
    ? (front * fraction(point, a, b)) / a
    : 1 - (front * fraction(1 - point, b, a)) / b;
}

/**
 * The point below which `share` of a beta distribution lies.
 * @param share  between 0 and 1, neither included
 * @throws RangeError if an argument is out of range
 */
export function betaQuantile(share: number, a: number, b: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`);
  const logNorm = logBeta(a, b);
  const density = (point: number) => Math.exp((a - 1) * Math.log(point) + (b - 1) * Math.log1p(-point) - logNorm);
  const nearZero = Math.exp((Math.log(share) + Math.log(a) + logNorm) / a);
  const mean = a / (a + b);
  return inverseShare(share, (x) => betaShare(x, a, b), density, 0, 1, nearZero < mean / 2 ? nearZero : mean);
}

const logBeta = (a: number, b: number): number => logGamma(a) + logGamma(b) - logGamma(a + b);

function fraction(point: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * point) / (a + 1));
  let product = d;
  for (let m = 1; m < TERMS_AT_MOST; m++) {
    const even = (m * (b - m) * point) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d);
    c = nonZero(1 + even / c);
    product *= d * c;
    const odd = (-(a + m) * (a + b + m) * point) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d);
    c = nonZero(1 + odd / c);
    product *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return product;
}

const nonZero = (number: number): number => (Math.abs(number) < TINY ? TINY : number);
