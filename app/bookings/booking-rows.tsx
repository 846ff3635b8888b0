import { withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { type Coverage, coverageByBooking } from "#lib/plan/road/coverage";
import type { Plan } from "#lib/plan/road/plan";
import { inWholes } from "#lib/plan/words/numbers";
import { ColourWords } from "../ui/colour-words";
import { CoverBar } from "../ui/cover-bar";
import { type Column, Table } from "../ui/table";

type Row = { readonly booking: Booking; readonly covered: Coverage | undefined };

const COLUMNS: readonly Column<Row>[] = [
  { head: "Event", cell: ({ booking }) => withWeekday(booking.eventOn) },
  {
    head: "Client",
    kind: "name",
    cell: ({ booking }) => <a href={`/bookings/${booking.id}`}>{booking.client}</a>,
  },
  { head: "Status", cell: ({ booking }) => <span className="tag">{booking.status}</span> },
  { head: "Palette", cell: ({ booking }) => <ColourWords colours={booking.palette} /> },
  { head: "Needed", unit: "stems", kind: "number", cell: ({ covered }) => inWholes(covered?.needStems ?? 0) },
  {
    head: "Coverage",
    cell: ({ covered }) =>
      covered ? (
        <CoverBar needStems={covered.needStems} shortStems={covered.shortStems} />
      ) : (
        <span className="soft">asks for nothing</span>
      ),
  },
  {
    head: "Paper",
    cell: ({ booking }) => (
      <a href={`/picking?booking=${booking.id}`} aria-label={`Pick list of ${booking.client}`}>
        pick list
      </a>
    ),
  },
];

/** Bookings with their day, palette and coverage, in the order given. */
export function BookingRows({ plan, bookings }: { plan: Plan; bookings: readonly Booking[] }) {
  const coverage = coverageByBooking(plan.match, plan.gaps);
  return (
    <Table
      caption="Bookings"
      isCaptionHidden
      columns={COLUMNS}
      rows={bookings.map((booking) => ({ booking, covered: coverage.get(booking.id) }))}
      keyOf={({ booking }) => booking.id}
      isShort={({ covered }) => (covered?.shortStems ?? 0) > 0}
    />
  );
}
