/**
 * The value below which a share of sorted numbers lies, straight between neighbours; unit of the numbers.
 * @param sorted  ascending, at least one
 * @param share   from 0 to 1
 * @throws RangeError if there is no number, or `share` is out of range
 * Source: R. J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50, 1996, definition 7.
 */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  if (sorted.length === 0) throw new RangeError("sorted must hold at least one number");
  if (!(share >= 0 && share <= 1)) throw new RangeError(`share must lie from 0 to 1, got ${share}`);
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const above = Math.min(below + 1, sorted.length - 1);
  return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
}
