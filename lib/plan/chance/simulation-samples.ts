import type { Role } from "#lib/domain/words";

/** What the columns of sampled seasons stand for: the season's own needs, in the order of the match. */
export type SampleFrame = {
  readonly seasonYear: number;
  readonly needs: readonly { readonly bookingId: number; readonly role: Role; readonly stems: number }[];
};

/**
 * Sampled seasons, a row each, on typed arrays that threads can hand over. Columns of `shortStems` are the needs of the frame.
 * `claimCents` is stems short times their price, each weighed by how likely its booking is to want it, as the match does; those of seasons
 * matched with it are in the sum, since a bed can serve them too.
 */
export type SeasonSamples = {
  readonly frame: SampleFrame;
  readonly firstSeason: number;
  readonly seasonCount: number;
  readonly shortStems: Int32Array<ArrayBuffer>;
  readonly claimCents: Float64Array<ArrayBuffer>;
};

/**
 * Samples of neighbouring runs of seasons as one, in order of season.
 * @throws RangeError if there are none, if they are of different farms, or if a season is missing or double
 */
export function merge(samples: readonly SeasonSamples[]): SeasonSamples {
  if (samples.length === 0) throw new RangeError("samples must not be empty");
  const parts = [...samples].sort((a, b) => a.firstSeason - b.firstSeason);
  const frame = JSON.stringify(parts[0].frame);
  let next = parts[0].firstSeason;
  for (const part of parts) {
    if (JSON.stringify(part.frame) !== frame) throw new RangeError("samples must be of the same farm");
    if (part.firstSeason !== next)
      throw new RangeError(`samples must follow one another: season ${next} expected, got ${part.firstSeason}`);
    next += part.seasonCount;
  }
  return {
    frame: parts[0].frame,
    firstSeason: parts[0].firstSeason,
    seasonCount: next - parts[0].firstSeason,
    shortStems: joined(
      Int32Array,
      parts.map(({ shortStems }) => shortStems),
    ),
    claimCents: joined(
      Float64Array,
      parts.map(({ claimCents }) => claimCents),
    ),
  };
}

/** The rows of the parts, one after the other, in a new array. */
function joined<Rows extends Int32Array<ArrayBuffer> | Float64Array<ArrayBuffer>>(
  make: new (length: number) => Rows,
  parts: readonly Rows[],
): Rows {
  const all = new make(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
