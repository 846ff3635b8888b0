/** Scores at even steps, at which beliefs are held: as many as needed that no step is wider than what is told apart. */
export type ScoreGrid = { readonly step: number; readonly scores: Float64Array };

const grid = (highest: number, step: number): ScoreGrid => {
  const half = Math.round(highest / step);
  return { step, scores: Float64Array.from({ length: 2 * half + 1 }, (_, index) => (index - half) * step) };
};

/** Of a planting's first cut: an eighth of its spread, so a day of a spread of eight. */
export const LATENESS = grid(4, 0.125);
/** Of what plantings of a crop share in their first cuts, and of what crops of a season share. */
export const SHARED = grid(4, 0.2);
/** Of a planting's yield, and of what plantings of a crop share in theirs. */
export const YIELD = grid(3.5, 0.25);
export const SHARED_YIELD = grid(3.5, 0.35);

/** Narrower than this a kernel would fall between the scores of a grid. */
const NARROWEST = 0.75;

/**
 * The chances of the scores of `to`, given each score of `from`: normal, at `loading` times the score, with the variance that is left of one. A row a
 * score of `from`; each row sums to 1.
 */
export function kernel(from: ScoreGrid, to: ScoreGrid, loading: number): Float64Array {
  const rows = new Float64Array(from.scores.length * to.scores.length);
  const spread = Math.max(Math.sqrt(Math.max(0, 1 - loading * loading)), NARROWEST * to.step);
  for (let row = 0; row < from.scores.length; row++) {
    const start = row * to.scores.length;
    let sum = 0;
    for (let place = 0; place < to.scores.length; place++) {
      const score = (to.scores[place] - loading * from.scores[row]) / spread;
      rows[start + place] = Math.exp(-0.5 * score * score);
      sum += rows[start + place];
    }
    for (let place = 0; place < to.scores.length; place++) rows[start + place] /= sum;
  }
  return rows;
}

/** The chances of a grid's scores under the standard normal distribution. */
export function standard({ scores }: ScoreGrid): Float64Array {
  const chances = scores.map((score) => Math.exp(-0.5 * score * score));
  const sum = chances.reduce((all, one) => all + one, 0);
  return chances.map((chance) => chance / sum);
}
