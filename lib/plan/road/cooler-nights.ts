import type { Interval } from "#lib/maths/interval-packing";
import { NOT_A_BUCKET } from "./pick-list";

/** Stems that could come into the cooler beside what stands there, in the order in which they would go in. `worthCents` is what one stem of them is worth. */
export type Piece = { readonly stems: number; readonly bucketStems: number; readonly worthCents: number };

/**
 * What is cut on a day for one booking, or lies there of a variety for nobody: it shares buckets [P1], which stand over the nights from `from` up to, and without,
 * `until` [C3]. `filled` is what stands there anyway, in buckets and parts of one. Day numbers.
 */
export type InCooler<Of extends Piece> = {
  readonly from: number;
  readonly until: number;
  filled: number;
  readonly pieces: Of[];
};

/** A bucket that could come into the cooler, with what fills it. It takes no place where it fills up one that stands there anyway. */
export type BucketAhead<Of extends Piece> = Interval & {
  readonly contents: readonly { readonly piece: Of; readonly stems: number }[];
};

/** Places that are left over each night from `from` up to, and without, `until`, when all that stands there anyway has its own; none below 0. */
export function placesLeft(
  standing: readonly InCooler<Piece>[],
  places: number,
  from: number,
  until: number,
): number[] {
  const left = new Array<number>(Math.max(0, until - from)).fill(places);
  for (const group of standing)
    for (let night = Math.max(from, group.from); night < group.until; night++)
      left[night - from] -= Math.ceil(group.filled - NOT_A_BUCKET);
  return left.map((count) => Math.max(0, count));
}

/**
 * The buckets that the pieces of a group fill, those first that are worth most for the room that they take. What is left of a bucket that stands there anyway is filled up
 * before another is begun; a stem that no longer fits wholly begins the next. Nights count from `first`, a day number.
 */
export function bucketsAhead<Of extends Piece>(
  { from, until, filled, pieces }: InCooler<Of>,
  first: number,
): BucketAhead<Of>[] {
  const start = Math.max(from, first) - first;
  const nights = { from: start, until: Math.max(start, until - first) };
  const worthOfRoom = ({ worthCents, bucketStems }: Of) => worthCents * bucketStems;
  const inTurn = [...pieces].sort((a, b) => worthOfRoom(b) - worthOfRoom(a));
  let room = Math.ceil(filled - NOT_A_BUCKET) - filled;
  const buckets: BucketAhead<Of>[] = [];
  let open = { ...nights, until: nights.from, worth: 0, contents: [] as BucketAhead<Of>["contents"][number][] };
  for (const piece of inTurn)
    for (let left = piece.stems; left > 0; ) {
      const fit = Math.min(left, Math.floor(room * piece.bucketStems + NOT_A_BUCKET));
      if (fit === 0) {
        buckets.push(open);
        open = { ...nights, worth: 0, contents: [] };
        room = 1;
        continue;
      }
      open.contents.push({ piece, stems: fit });
      open.worth += fit * piece.worthCents;
      room -= fit / piece.bucketStems;
      left -= fit;
    }
  buckets.push(open);
  return buckets.filter(({ contents }) => contents.length > 0);
}
