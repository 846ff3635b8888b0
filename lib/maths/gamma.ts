import { inverseShare } from "./inverse-share";
import { logGamma } from "./log-gamma";

const TERMS_AT_MOST = 10_000;
const TINY = 1e-300;

/**
 * The share of a gamma distribution (scale 1) that lies below `point`: the regularised incomplete gamma function P(shape, point).
 * By its series below shape + 1 and by its continued fraction (modified Lentz) above. Relative error about 1e-13.
 * @param shape  above 0
 * Source: NIST Digital Library of Mathematical Functions, 8.11.4 (series) and 8.9.2 (continued fraction).
 */
export function gammaShare(point: number, shape: number): number {
  if (!(shape > 0)) throw new RangeError(`shape must be above 0, got ${shape}`);
  if (point <= 0) return 0;
  return point < shape + 1 ? bySeries(point, shape) : 1 - byFraction(point, shape);
}

/** The share that lies above `point`, as exact in the upper tail as {@link gammaShare} in the lower. */
export function gammaShareAbove(point: number, shape: number): number {
  if (point <= 0) return 1;
  return point < shape + 1 ? 1 - bySeries(point, shape) : byFraction(point, shape);
}

/**
 * The point below which `share` of a gamma distribution (scale 1, so mean = `shape`) lies.
 * @param share  between 0 and 1, neither included
 * @throws RangeError if `share` or `shape` is out of range
 */
export function gammaQuantile(share: number, shape: number): number {
  if (!(share > 0 && share < 1)) throw new RangeError(`share must lie between 0 and 1, got ${share}`);
  const logNorm = logGamma(shape);
  const density = (point: number) => Math.exp((shape - 1) * Math.log(point) - point - logNorm);
  const most = shape + 50 * Math.sqrt(shape) + 100;
  /** Near 0 the share is point^shape / gamma(shape + 1); further up the mean is as good a start as any. */
  const nearZero = Math.exp((Math.log(share) + logGamma(shape + 1)) / shape);
  return inverseShare(share, (x) => gammaShare(x, shape), density, 0, most, nearZero < shape / 2 ? nearZero : shape);
}

const front = (point: number, shape: number): number => Math.exp(shape * Math.log(point) - point - logGamma(shape));

function bySeries(point: number, shape: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let index = 1; index < TERMS_AT_MOST && term > sum * 1e-17; index++) {
    term *= point / (shape + index);
    sum += term;
  }
  return sum * front(point, shape);
}

function byFraction(point: number, shape: number): number {
  let b = point + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let product = d;
  for (let index = 1; index < TERMS_AT_MOST; index++) {
    const a = -index * (index - shape);
    b += 2;
    d = 1 / nonZero(a * d + b);
    c = nonZero(b + a / c);
    product *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return front(point, shape) * product;
}

const nonZero = (number: number): number => (Math.abs(number) < TINY ? TINY : number);
