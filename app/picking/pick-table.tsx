import { inFull, inShort, toDay } from "#lib/domain/day";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { type PickDay, pickTotals } from "#lib/plan/road/pick-sheets";
import { bunchesInWords } from "#lib/plan/words/bunch-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";

const FOR: Column<PickLine> = {
  head: "For",
  cell: ({ booking }) => (
    <>
      <a href={`/bookings/${booking.id}`}>{booking.client}</a>, {inShort(booking.eventOn)}
    </>
  ),
};

const columnsOf = (forBooking: boolean): readonly Column<PickLine>[] => [
  {
    head: "Bed",
    kind: "name",
    cell: ({ stand }) =>
      stand.kind === "planting" ? <a href={`/beds/${stand.planting.bed.id}`}>{stand.planting.bed.name}</a> : "Cooler",
  },
  {
    head: "Variety and stage",
    phone: "first",
    cell: ({ crop, variety, stand }) => (
      <>
        {crop.name} <strong>{variety.name}</strong> <ColourWord colour={variety.colour} />
        <br />
        <span className="small soft">{stand.kind === "cooler" ? "already cut" : crop.cutStage}</span>
      </>
    ),
  },
  {
    head: "Cut",
    unit: "stems",
    kind: "number",
    cell: ({ stemsToCut }) => <strong>{inWholes(stemsToCut)}</strong>,
  },
  { head: "Keep", unit: "stems", kind: "number", cell: ({ stems }) => inWholes(stems) },
  { head: "Bunches", kind: "number", cell: ({ stems, crop }) => bunchesInWords(stems, crop.bunchStems.count) },
  ...(forBooking ? [] : [FOR]),
  { head: "Hold", className: "hold", cell: ({ heldDays }) => countOf(heldDays, "day") },
];

/** What to cut, a line a row; of several days, each under its own heading row. The boxes to tick and the room to write are on the paper. */
export const PickTable = ({ days, forBooking }: { days: readonly PickDay[]; forBooking: boolean }) => (
  <Table
    caption="What to cut"
    isCaptionHidden
    className="picks"
    columns={columnsOf(forBooking)}
    groups={days.map(({ cutDay, lines }) => ({
      title: forBooking ? `${inFull(toDay(cutDay))}: ${totalsInWords(lines)}` : null,
      rows: lines,
    }))}
    keyOf={({ stand, variety, booking }) => `${placeOf(stand)} ${variety.id} ${booking.id}`}
    rowClass={() => "pick-line"}
  />
);

/** "118 stems, 17 bunches, 10 buckets" */
export function totalsInWords(lines: readonly PickLine[]): string {
  const { stems, bunchCount, bucketCount } = pickTotals(lines);
  return `${countOf(stems, "stem")}, ${countOf(bunchCount, "bunch", "bunches")}, ${countOf(bucketCount, "bucket")}`;
}
