/**
 * Plants that stand in a bed: so many rows along it, each with a plant every so many metres, the first and last half a distance from the ends.
 * `common practice`. What is left of a row is left empty.
 *
 * @returns whole plants; 0 where nothing fits
 * @throws RangeError unless the bed, the rows and the distance are above nothing
 */
export function plantsInBed(bed: {
  readonly lengthMetres: number;
  readonly rowCount: number;
  readonly distanceMetres: number;
}): number {
  for (const [name, count] of Object.entries(bed))
    if (!(count > 0) || !Number.isFinite(count)) throw new RangeError(`${name} must be above 0, got ${count}`);
  // A billionth of a plant is floating point: 15 m every 0.3 m are fifty.
  return Math.floor(bed.lengthMetres / bed.distanceMetres + 1e-9) * Math.floor(bed.rowCount);
}
