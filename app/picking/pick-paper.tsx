import { inFull, inShort, toDay } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { bookingsOfLines, type PickRow, pickRows } from "#lib/plan/road/pick-rows";
import type { PickDay } from "#lib/plan/road/pick-sheets";
import { bunchesInWords } from "#lib/plan/words/bunch-words";
import { inWholes } from "#lib/plan/words/numbers";
import { type Column, Table } from "../ui/table";
import { TickBox, WriteLine } from "../ui/to-write";
import { type PaperRow, paperKey, paperRows, placeColumns } from "./paper-columns";
import { Stages, stagesOf } from "./stages";
import { Tie, tieLetter } from "./tie";
import { totalsInWords } from "./totals-in-words";

/**
 * Picking days on paper, one after the other: a row for each place and variety, ruled for a pencil, with a box to tick and room for what was really cut. Who gets
 * the stems stands in lettered columns, the stage to cut at in lettered notes at the foot.
 */
export function PickPaper({ days, madeAt }: { days: readonly PickDay[]; madeAt: string }) {
  const { crops, noteOf } = stagesOf(days);
  return (
    <div className={days.length > 1 ? "paper-sheets close-ruled" : "paper-sheets"}>
      {days.map((day) => (
        <DayPaper key={day.cutDay} day={day} noteOf={noteOf} madeAt={madeAt} />
      ))}
      <Stages crops={crops} noteOf={noteOf}>
        cut is with what will be graded out, wilt or break, keep is what the bookings get.
      </Stages>
    </div>
  );
}

type DayProps = {
  /** When the list was made, by the clock on the farm's wall: what was sprayed since is not on it. */
  readonly madeAt: string;
  readonly day: PickDay;
  readonly noteOf: ReadonlyMap<number, string>;
};

function DayPaper({ day: { cutDay, lines }, noteOf, madeAt }: DayProps) {
  const bookings = bookingsOfLines(lines);
  const isForOne = bookings.length === 1;
  return (
    <section className="day-paper" aria-labelledby={`paper-${cutDay}`}>
      <h2 id={`paper-${cutDay}`}>{inFull(toDay(cutDay))}</h2>
      <p>
        {totalsInWords(lines)}
        {isForOne && `, all for ${bookings[0].client}, ${inShort(bookings[0].eventOn)}`}. As the farm stood at {madeAt}:
        ask what was sprayed since.
      </p>
      {!isForOne && (
        <ul className="ties">
          {bookings.map((booking, index) => (
            <li key={booking.id}>
              <Tie index={index} /> {booking.client}, {inShort(booking.eventOn)}
            </li>
          ))}
        </ul>
      )}
      <Table
        caption={`What to cut on ${inFull(toDay(cutDay))}`}
        isCaptionHidden
        className="paper-rows"
        columns={columnsOf(isForOne ? [] : bookings, noteOf)}
        rows={paperRows(pickRows(lines))}
        keyOf={paperKey}
        rowClass={() => "pick-line"}
        isNarrow
      />
    </section>
  );
}

type Row = PaperRow<PickRow>;

const columnsOf = (bookings: readonly Booking[], noteOf: ReadonlyMap<number, string>): readonly Column<Row>[] => [
  { head: "Done", kind: "tool", className: "paper-box", cell: () => <TickBox /> },
  ...placeColumns<PickRow>(noteOf, ({ stretchedStems }) =>
    stretchedStems > 0 ? ` ${inWholes(stretchedStems)} at a stretch` : "",
  ),
  { head: "Cut", kind: "number", className: "paper-cut", cell: ({ row }) => inWholes(row.stemsToCut) },
  ...bookings.map(
    (booking, index): Column<Row> => ({
      head: tieLetter(index),
      kind: "number",
      cell: ({ row }) => {
        const stems = row.stemsOfBooking.get(booking.id);
        return stems ? inWholes(stems) : "";
      },
    }),
  ),
  { head: "Keep", kind: "number", cell: ({ row }) => inWholes(row.stems) },
  {
    head: "Bunches",
    kind: "number",
    cell: ({ row }) => bunchesInWords(row.stems, row.crop.bunchStems.count),
  },
  { head: "Really cut", className: "paper-write", cell: () => <WriteLine /> },
];
