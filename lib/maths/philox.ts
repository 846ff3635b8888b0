/** Four uniform numbers between 0 and 1, neither of them included. */
export type FourShares = { a: number; b: number; c: number; d: number };

const ROUNDS = 10;
const FIRST_MULTIPLIER = 0xd2511f53;
const SECOND_MULTIPLIER = 0xcd9e8d57;
const FIRST_WEYL = 0x9e3779b9;
const SECOND_WEYL = 0xbb67ae85;

/**
 * Four random numbers for a place in a large table of chance: the same key and place give the same four on every machine, whatever was
 * drawn before and on however many threads. Unlike a stream, it has no state to share or to skip.
 *
 * @param key    two words that choose the table (a seed); read as unsigned 32 bits
 * @param place  four words that choose the row; read as unsigned 32 bits
 * @returns      four words, unsigned 32 bits, uniform
 * Source: Philox4x32-10; J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, "Parallel random numbers: as easy as 1, 2, 3",
 * Proceedings of SC11, 2011.
 */
export function philox(key: readonly [number, number], place: readonly [number, number, number, number]) {
  let [keyA, keyB] = key;
  let [a, b, c, d] = place;
  for (let round = 0; round < ROUNDS; round++) {
    const highA = highWord(FIRST_MULTIPLIER, a);
    const lowA = Math.imul(FIRST_MULTIPLIER, a);
    const highC = highWord(SECOND_MULTIPLIER, c);
    const lowC = Math.imul(SECOND_MULTIPLIER, c);
    a = highC ^ b ^ keyA;
    b = lowC;
    c = highA ^ d ^ keyB;
    d = lowA;
    keyA = (keyA + FIRST_WEYL) | 0;
    keyB = (keyB + SECOND_WEYL) | 0;
  }
  return { a: a >>> 0, b: b >>> 0, c: c >>> 0, d: d >>> 0 };
}

/** The four words of {@link philox} as numbers between 0 and 1: the middle of each of 2^32 equal steps, so never 0 and never 1. */
export function sharesAt(key: readonly [number, number], place: readonly [number, number, number, number]): FourShares {
  const { a, b, c, d } = philox(key, place);
  return { a: middle(a), b: middle(b), c: middle(c), d: middle(d) };
}

const middle = (word: number): number => (word + 0.5) / 4294967296;

/** The upper 32 bits of a product of two 32-bit words, by halves: no product here passes 2^53. */
function highWord(first: number, second: number): number {
  const firstHigh = first >>> 16;
  const firstLow = first & 0xffff;
  const secondHigh = second >>> 16;
  const secondLow = second & 0xffff;
  const cross = firstHigh * secondLow + ((firstLow * secondLow) >>> 16);
  const carry = (cross & 0xffff) + firstLow * secondHigh;
  return (firstHigh * secondHigh + Math.floor(cross / 65536) + Math.floor(carry / 65536)) | 0;
}
