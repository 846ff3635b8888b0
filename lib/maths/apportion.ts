/** Weights are read to so many decimals of one, so that 0.1, 0.2 and 0.3 stand to each other as 1, 2 and 3. */
const WEIGHT_PARTS = 1_000_000;

/**
 * Splits a whole number over weights so that the parts are whole and add up to it exactly: each part is its fair share rounded down,
 * and what is left goes one each to the largest remainders (the earlier index on a tie). Shares are divided in whole numbers, so that what ties, ties.
 *
 * @param total    whole, 0 or more
 * @param weights  0 or more each, read to a millionth; if all are 0 the parts are 0, and `total` must be 0 too
 * @returns        whole parts, same length and order as `weights`, summing to `total`
 * @throws RangeError if `total` is not whole or negative, a weight is negative or not finite, or there is a total but no weight
 * Source: largest remainder method (Hare quota), https://en.wikipedia.org/wiki/Largest_remainder_method
 */
export function apportion(total: number, weights: ArrayLike<number>): Int32Array {
  if (!Number.isInteger(total) || total < 0) throw new RangeError(`total must be whole and not negative, got ${total}`);
  const parts = new Int32Array(weights.length);
  const whole = new Float64Array(weights.length);
  let weightSum = 0;
  for (let index = 0; index < weights.length; index++) {
    if (!(weights[index] >= 0 && weights[index] < Number.POSITIVE_INFINITY))
      throw new RangeError(`weights[${index}] must be 0 or more, got ${weights[index]}`);
    whole[index] = Math.round(weights[index] * WEIGHT_PARTS);
    weightSum += whole[index];
  }
  if (total === 0) return parts;
  if (weightSum === 0) throw new RangeError(`weights must not all be 0 when total is ${total}`);
  const remainders = new Float64Array(weights.length);
  let left = total;
  for (let index = 0; index < weights.length; index++) {
    parts[index] = wholeShare(total, whole[index], weightSum);
    remainders[index] = remainder(total, whole[index], weightSum, parts[index]);
    left -= parts[index];
  }
  const byRemainder = Array.from(remainders.keys()).sort((a, b) => remainders[b] - remainders[a] || a - b);
  for (const index of byRemainder.slice(0, left)) parts[index] += 1;
  return parts;
}

/** `total × weight / weightSum` rounded down, exactly: a quotient of numbers below 2 ** 53 never rounds up to a whole number. */
const wholeShare = (total: number, weight: number, weightSum: number): number =>
  Number.isSafeInteger(total * weight)
    ? Math.floor((total * weight) / weightSum)
    : Number((BigInt(total) * BigInt(weight)) / BigInt(weightSum));

/** What of `total × weight` is left over beside so many whole shares. */
const remainder = (total: number, weight: number, weightSum: number, share: number): number =>
  Number.isSafeInteger(total * weight)
    ? total * weight - share * weightSum
    : Number(BigInt(total) * BigInt(weight) - BigInt(share) * BigInt(weightSum));

/** The part of `total` that falls on step `index` of `stepCount` equal steps: whole, never two apart, summing to `total`. */
export const evenPart = (total: number, index: number, stepCount: number): number =>
  Math.floor(((index + 1) * total) / stepCount) - Math.floor((index * total) / stepCount);
