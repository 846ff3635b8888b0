import { normalShare } from "./normal";

const HIGHEST_SCORE = 6;
const STEPS_A_SCORE = 32;
const STEP_COUNT = 2 * HIGHEST_SCORE * STEPS_A_SCORE;

/** A quantity as a function of a standard normal score. */
export type OfScore = (score: number) => number;

/**
 * Gives any distribution the score of a normal one, so that quantities can share a part of their chance: the value at score z lies above
 * the same share of its distribution as z does of the normal. Tabulated 32 times a score and straight between; scores are held to
 * six either side, which one draw in 500 million passes.
 * @param quantile  the distribution's own: the value below which a share lies
 * Source: the normal copula ("NORTA"), M. C. Cario and B. L. Nelson, 1997.
 */
export function scoreTable(quantile: (share: number) => number): OfScore {
  const values = Float64Array.from({ length: STEP_COUNT + 1 }, (_, step) =>
    quantile(normalShare(step / STEPS_A_SCORE - HIGHEST_SCORE)),
  );
  return (score) => {
    const place = (Math.min(HIGHEST_SCORE, Math.max(-HIGHEST_SCORE, score)) + HIGHEST_SCORE) * STEPS_A_SCORE;
    const step = Math.min(STEP_COUNT - 1, Math.floor(place));
    return values[step] + (place - step) * (values[step + 1] - values[step]);
  };
}
