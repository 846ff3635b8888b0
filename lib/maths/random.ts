/** A source of chance: each call gives a number from 0 up to, not including, 1. Always an argument, never global. */
export type RandomSource = () => number;

/**
 * A repeatable source of chance: the same seed gives the same numbers on every machine.
 * Source: "Mulberry32", a 32-bit counter with a mixing function, period 2^32 (public domain, T. Ettinger, 2017; from memory).
 */
export function seededRandom(seed: number): RandomSource {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A whole number from `least` to `most`, both included. */
export const wholeBetween = (random: RandomSource, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));

/** One of `choices`. Throws RangeError when there is none. */
export function oneOf<T>(random: RandomSource, choices: readonly T[]): T {
  if (choices.length === 0) throw new RangeError("choices must not be empty");
  return choices[Math.floor(random() * choices.length)];
}
