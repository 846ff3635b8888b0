import type { SampleFrame } from "./simulation-frame";

/**
 * Sampled seasons, a row each, on typed arrays that threads can hand over. Columns are those of the frame: needs; weeks × roles;
 * open days × colours. `buyInCents` is what whole bunches for all that is short would cost; `claimCents` is stems short times their price,
 * each weighed by how likely its booking is to want it, as the match does.
 */
export type SeasonSamples = {
  readonly frame: SampleFrame;
  readonly firstSeason: number;
  readonly seasonCount: number;
  readonly shortStems: Int32Array<ArrayBuffer>;
  readonly reachableStems: Int32Array<ArrayBuffer>;
  /** Focal stems in reach of an open day that nobody has claimed. */
  readonly openStems: Int32Array<ArrayBuffer>;
  readonly buyInCents: Float64Array<ArrayBuffer>;
  readonly claimCents: Float64Array<ArrayBuffer>;
};

/**
 * Samples of neighbouring runs of seasons as one, in order of season.
 * @throws RangeError if there are none, if they are of different farms or what-ifs, or if a season is missing or double
 */
export function merge(samples: readonly SeasonSamples[]): SeasonSamples {
  if (samples.length === 0) throw new RangeError("samples must not be empty");
  const parts = [...samples].sort((a, b) => a.firstSeason - b.firstSeason);
  const frame = JSON.stringify(parts[0].frame);
  let next = parts[0].firstSeason;
  for (const part of parts) {
    if (JSON.stringify(part.frame) !== frame) throw new RangeError("samples must be of the same farm and changes");
    if (part.firstSeason !== next)
      throw new RangeError(`samples must follow one another: season ${next} expected, got ${part.firstSeason}`);
    next += part.seasonCount;
  }
  return {
    frame: parts[0].frame,
    firstSeason: parts[0].firstSeason,
    seasonCount: next - parts[0].firstSeason,
    shortStems: wholeRows(parts.map(({ shortStems }) => shortStems)),
    reachableStems: wholeRows(parts.map(({ reachableStems }) => reachableStems)),
    openStems: wholeRows(parts.map(({ openStems }) => openStems)),
    buyInCents: centRows(parts.map(({ buyInCents }) => buyInCents)),
    claimCents: centRows(parts.map(({ claimCents }) => claimCents)),
  };
}

const lengthOf = (parts: readonly ArrayLike<number>[]): number => parts.reduce((sum, { length }) => sum + length, 0);

function wholeRows(parts: readonly Int32Array[]): Int32Array<ArrayBuffer> {
  const all = new Int32Array(lengthOf(parts));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function centRows(parts: readonly Float64Array[]): Float64Array<ArrayBuffer> {
  const all = new Float64Array(lengthOf(parts));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
