/**
 * Splits a whole number over weights so that the parts are whole and add up to it exactly: each part is its fair share rounded down,
 * and what is left goes one each to the largest remainders (the earlier index on a tie).
 *
 * @param total    whole, 0 or more
 * @param weights  0 or more each; if all are 0 the parts are 0, and `total` must be 0 too
 * @returns        whole parts, same length and order as `weights`, summing to `total`
 * @throws RangeError if `total` is not whole or negative, a weight is negative, or there is a total but no weight
 * Source: largest remainder method (Hare quota), https://en.wikipedia.org/wiki/Largest_remainder_method
 */
export function apportion(total: number, weights: ArrayLike<number>): Int32Array {
  if (!Number.isInteger(total) || total < 0) throw new RangeError(`total must be whole and not negative, got ${total}`);
  const parts = new Int32Array(weights.length);
  let weightSum = 0;
  for (let index = 0; index < weights.length; index++) {
    if (!(weights[index] >= 0)) throw new RangeError(`weights[${index}] must be 0 or more, got ${weights[index]}`);
    weightSum += weights[index];
  }
  if (total === 0) return parts;
  if (weightSum === 0) throw new RangeError(`weights must not all be 0 when total is ${total}`);
  const remainders: number[] = [];
  let left = total;
  for (let index = 0; index < weights.length; index++) {
    const share = (total * weights[index]) / weightSum;
    parts[index] = Math.floor(share);
    remainders.push(share - parts[index]);
    left -= parts[index];
  }
  const byRemainder = remainders.map((_, index) => index).sort((a, b) => remainders[b] - remainders[a] || a - b);
  for (const index of byRemainder.slice(0, left)) parts[index] += 1;
  return parts;
}

/** The part of `total` that falls on step `index` of `stepCount` equal steps: whole, never two apart, summing to `total`. */
export const evenPart = (total: number, index: number, stepCount: number): number =>
  Math.floor(((index + 1) * total) / stepCount) - Math.floor((index * total) / stepCount);
