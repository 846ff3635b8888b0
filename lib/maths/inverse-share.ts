const STEPS_AT_MOST = 200;

/**
 * The point below which a given share of a distribution lies: Newton's steps on its share and density, kept inside a bracket that halves
 * whenever a step would leave it.
 *
 * @param shareBelow  rises from 0 at `least` to 1 at `most`
 * @param density     its slope
 * @param guess       inside the bracket
 */
export function inverseShare(
  share: number,
  shareBelow: (point: number) => number,
  density: (point: number) => number,
  least: number,
  most: number,
  guess: number,
): number {
  let low = least;
  let high = most;
  let point = guess > low && guess < high ? guess : (low + high) / 2;
  for (let step = 0; step < STEPS_AT_MOST; step++) {
    const error = shareBelow(point) - share;
    if (error === 0) return point;
    if (error > 0) high = point;
    else low = point;
    const newton = point - error / density(point);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - point) <= 1e-15 * Math.abs(next) || next === low || next === high) return next;
    point = next;
  }
  return point;
}
