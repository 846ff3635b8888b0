import { normalShare } from "./normal";

/** Beyond so many spreads all or nothing lies above, to less than a ten-millionth of a spread. */
const FAR = 5;
const STEPS_PER_SCORE = 32;

/** The excess and its slope, which is the share of the distribution below the score, at each place of the table. */
let table: { readonly excess: Float64Array; readonly slope: Float64Array } | null = null;

/**
 * The mean of what a normal distribution of mean `score` and spread 1 has above 0: its first partial moment, z Φ(z) + φ(z). From a table, with cubics
 * between its places that meet the slopes, to a hundred-millionth.
 * Source: any textbook of inventories, where it is the standard loss function of −z.
 */
export function normalExcess(score: number): number {
  if (score >= FAR) return score;
  if (score <= -FAR) return 0;
  table ??= tabulated();
  const { excess, slope } = table;
  const place = (score + FAR) * STEPS_PER_SCORE;
  const left = Math.min(Math.floor(place), excess.length - 2);
  const t = place - left;
  const s = 1 - t;
  // Hermite's cubic: values and slopes at both ends.
  return (
    s * s * ((1 + 2 * t) * excess[left] + (t * slope[left]) / STEPS_PER_SCORE) +
    t * t * ((1 + 2 * s) * excess[left + 1] - (s * slope[left + 1]) / STEPS_PER_SCORE)
  );
}

function tabulated() {
  const placeCount = 2 * FAR * STEPS_PER_SCORE + 1;
  const excess = new Float64Array(placeCount);
  const slope = new Float64Array(placeCount);
  for (let place = 0; place < placeCount; place++) {
    const z = place / STEPS_PER_SCORE - FAR;
    slope[place] = normalShare(z);
    excess[place] = z * slope[place] + Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
  }
  return { excess, slope };
}
