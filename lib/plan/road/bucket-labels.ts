import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { NOT_A_BUCKET, type PickLine } from "./pick-list";

/** Stems of one variety in a bucket. */
export type InBucket = { readonly crop: Crop; readonly variety: Variety; readonly stems: number };

/** The label of one bucket: what is cut on a day for a booking and fills it, and which of the day's buckets of the booking it is, from 1. */
export type BucketLabel = {
  readonly booking: Booking;
  readonly cutDay: number;
  readonly bucket: number;
  readonly bucketCount: number;
  readonly contents: readonly InBucket[];
  readonly stems: number;
};

/**
 * A label for each bucket of some lines, day by day and booking by booking in the order of the lines. Buckets are filled one after the other, as the pick
 * list counts them: a stem that no longer fits wholly goes into the next. There are as many labels as buckets, and their stems are those of
 * the lines [P1].
 */
export function bucketLabels(lines: readonly PickLine[]): BucketLabel[] {
  const fillings = new Map<string, PickLine[]>();
  for (const line of lines) {
    const key = `${line.cutDay} ${line.booking.id}`;
    const known = fillings.get(key);
    if (known) known.push(line);
    else fillings.set(key, [line]);
  }
  return [...fillings.values()].flatMap(labelsOf);
}

/** The buckets of one day and booking. */
function labelsOf(lines: readonly PickLine[]): BucketLabel[] {
  const [{ booking, cutDay }] = lines;
  const buckets: InBucket[][] = [];
  let filled = 0;
  for (const { crop, variety, stems } of lines) {
    for (let left = stems; left > 0; ) {
      const bucket = Math.max(1, Math.ceil(filled + 1 / crop.bucketStems.count - NOT_A_BUCKET));
      const room = Math.floor((bucket - filled) * crop.bucketStems.count + NOT_A_BUCKET);
      const put = Math.min(left, Math.max(1, room));
      addTo(buckets, bucket - 1, { crop, variety, stems: put });
      filled += put / crop.bucketStems.count;
      left -= put;
    }
  }
  return buckets.map((contents, index) => ({
    booking,
    cutDay,
    bucket: index + 1,
    bucketCount: buckets.length,
    contents,
    stems: contents.reduce((sum, { stems }) => sum + stems, 0),
  }));
}

/** Stems of a variety that is in the bucket already, from another bed, are added to it. */
function addTo(buckets: InBucket[][], index: number, { crop, variety, stems }: InBucket): void {
  const contents = buckets[index] ?? [];
  const at = contents.findIndex((known) => known.variety === variety);
  if (at < 0) contents.push({ crop, variety, stems });
  else contents[at] = { crop, variety, stems: contents[at].stems + stems };
  buckets[index] = contents;
}
