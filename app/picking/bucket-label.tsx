import { toDay, withWeekday } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type BucketLabel, bucketLabels, type InBucket } from "#lib/plan/road/bucket-labels";
import { bookingsOfLines } from "#lib/plan/road/pick-rows";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { benchDaysInWords } from "#lib/plan/words/event-days-words";
import { countOf } from "#lib/plan/words/numbers";
import { tieClass, tieLetter } from "./tie";

/** So many letters have room in the usual size; more are set smaller, and what has no room then is counted. */
const ROOMY = 130;
const FULL = 230;

/** A label for each bucket of some days, 91 by 49 mm, ten a page: a hole at the left for the string, and the booking's tie as a band. A blank one ends each day. */
export const BucketLabels = ({ days, farm }: { days: readonly PickDay[]; farm: Farm }) =>
  days.map(({ cutDay, lines }) => {
    const bookings = bookingsOfLines(lines).map(({ id }) => id);
    const labels = bucketLabels(lines).map((label) => ({ label, tieIndex: bookings.indexOf(label.booking.id) }));
    return (
      <ul key={cutDay} className="bucket-labels" aria-label={`Bucket labels of ${withWeekday(toDay(cutDay))}`}>
        {labels
          .sort((a, b) => a.tieIndex - b.tieIndex)
          .map(({ label, tieIndex }) => (
            <Label key={`${label.booking.id} ${label.bucket}`} label={label} tieIndex={tieIndex} farm={farm} />
          ))}
        <Blank cutDay={cutDay} />
      </ul>
    );
  });

function Label({
  label: { booking, cutDay, bucket, bucketCount, contents, stems },
  tieIndex,
  farm,
}: {
  label: BucketLabel;
  tieIndex: number;
  farm: Farm;
}) {
  const named = contents.filter((_, index) => lettersOf(contents.slice(0, index + 1)) <= FULL).length;
  return (
    <li className="bucket-label">
      <span className="label-hole" aria-hidden="true" />
      <p className="label-name">{booking.client}</p>
      <p className="label-day">
        <span>{booking.palette.join(", ") || "any colour"}</span> <b>{withWeekday(booking.eventOn)}</b>
      </p>
      <p className="label-band">
        <i className={tieClass(tieIndex)} aria-hidden="true" />
        <b>{tieLetter(tieIndex)}</b>
        <span>{benchDaysInWords(booking, farm)}</span>
      </p>
      <p className={lettersOf(contents) > ROOMY ? "label-what label-full" : "label-what"}>
        {byCrop(contents.slice(0, named)).map(({ crop, varieties }, index) => (
          <span key={crop}>
            {index > 0 && "; "}
            <b>{crop}</b> {varieties}
          </span>
        ))}
        {contents.length > named && `; and ${contents.length - named} more, on the pick list`}
      </p>
      <p className="label-foot">
        <span>cut {withWeekday(toDay(cutDay))}</span>
        <span>{countOf(stems, "stem")}</span>
        <b>
          bucket {bucket} of {bucketCount}
        </b>
      </p>
    </li>
  );
}

const Blank = ({ cutDay }: { cutDay: number }) => (
  <li className="bucket-label">
    <span className="label-hole" aria-hidden="true" />
    <p className="label-name">Spare</p>
    <p className="label-day">over, or for the shop</p>
    <p />
    <p className="label-what" />
    <p className="label-foot">
      <span>cut {withWeekday(toDay(cutDay))}</span>
      <span>stems</span>
      <b>bucket</b>
    </p>
  </li>
);

/** "Lark Oatcake 16, Lark Meringue 8" under each crop, in the order in which they fill the bucket. */
function byCrop(contents: readonly InBucket[]): { crop: string; varieties: string }[] {
  const crops = new Map<string, string[]>();
  for (const { crop, variety, stems } of contents)
    crops.set(crop.name, [...(crops.get(crop.name) ?? []), `${variety.name} ${stems}`]);
  return [...crops].map(([crop, varieties]) => ({ crop, varieties: varieties.join(", ") }));
}

const lettersOf = (contents: readonly InBucket[]): number =>
  byCrop(contents).reduce((sum, { crop, varieties }) => sum + crop.length + varieties.length + 3, 0);
