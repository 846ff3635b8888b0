/** A number exactly: `top / bottom` in lowest terms, `bottom` above 0. */
export type Fraction = { readonly top: bigint; readonly bottom: bigint };

/** A fraction of parts no smaller than a millionth is simple enough to be meant. */
const SIMPLE_BOTTOM = 1_000_000n;
/** Decimals that a number may have been typed with: a tenth of a cubic yard is thirteen in cubic metres. */
const DECIMALS = 13;
/** How far floating point may have carried a number from what was meant, as a share of it: four steps of its last place. */
const DRIFT_SHARE = 2 ** -50;

/**
 * The number that was meant: 55.74182400000001, which is what 600 × 0.3048 ² comes to in floating point, is 55.741824, and 0.3333333333333333 a
 * third. Of all that are as good as equal, the simplest fraction if it is simple, else the decimal of at most 13 places, else that fraction.
 * @throws RangeError if the number is not finite
 */
export function asMeant(number: number): Fraction {
  if (!Number.isFinite(number)) throw new RangeError(`number must be finite, got ${number}`);
  const near = (other: number) => Math.abs(other - number) <= DRIFT_SHARE * Math.abs(number);
  const simplest = simplestFraction(number, near);
  if (simplest.bottom <= SIMPLE_BOTTOM) return simplest;
  const digits = number.toFixed(DECIMALS);
  return near(Number(digits)) ? fraction(BigInt(digits.replace(".", "")), 10n ** BigInt(DECIMALS)) : simplest;
}

/** Continued fractions give the simplest approximations in turn: https://en.wikipedia.org/wiki/Continued_fraction */
function simplestFraction(number: number, isNear: (other: number) => boolean): Fraction {
  let [top, topBefore] = [1n, 0n];
  let [bottom, bottomBefore] = [0n, 1n];
  for (let rest = number; ; rest = 1 / (rest - Math.floor(rest))) {
    const part = BigInt(Math.floor(rest));
    [top, topBefore] = [part * top + topBefore, top];
    [bottom, bottomBefore] = [part * bottom + bottomBefore, bottom];
    if (isNear(Number(top) / Number(bottom)) || rest === Math.floor(rest)) return fraction(top, bottom);
  }
}

/** @throws RangeError if `bottom` is 0 */
export function fraction(top: bigint, bottom: bigint): Fraction {
  if (bottom === 0n) throw new RangeError(`bottom must not be 0, got ${top} / 0`);
  const divisor = greatestCommonDivisor(top, bottom) * (bottom < 0n ? -1n : 1n);
  return { top: top / divisor, bottom: bottom / divisor };
}

export const whole = (number: number): Fraction => ({ top: BigInt(number), bottom: 1n });
export const sum = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
export const difference = (a: Fraction, b: Fraction): Fraction => sum(a, { top: -b.top, bottom: b.bottom });
export const product = (a: Fraction, b: Fraction): Fraction => fraction(a.top * b.top, a.bottom * b.bottom);
/** @throws RangeError if `b` is 0 */
export const quotient = (a: Fraction, b: Fraction): Fraction => fraction(a.top * b.bottom, a.bottom * b.top);
/** The greatest whole number that is no more. */
export const floored = ({ top, bottom }: Fraction): bigint =>
  top >= 0n || top % bottom === 0n ? top / bottom : top / bottom - 1n;

/** Fractions as whole numbers of their smallest common part. */
export function inCommonParts(fractions: readonly Fraction[]): bigint[] {
  const parts = fractions.reduce((common, { bottom }) => (common / greatestCommonDivisor(common, bottom)) * bottom, 1n);
  return fractions.map(({ top, bottom }) => top * (parts / bottom));
}

/** Not negative, and not 0 unless both are. */
function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [more, less] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (less !== 0n) [more, less] = [less, more % less];
  return more;
}
