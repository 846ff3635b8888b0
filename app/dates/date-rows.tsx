import { type Day, withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { OpenDate } from "#lib/plan/road/open-dates";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { ColourWord } from "../ui/colour-words";
import { type Column, Table } from "../ui/table";
import { monthsOf } from "./months";

type Props = { dates: readonly OpenDate[]; bookingsOf: (day: Day) => readonly Booking[]; asked: Day | null };

/** The numbers of the strip: each Saturday with its stems left, their colours, and who has booked its week; a list on a phone. */
export function DateRows({ dates, bookingsOf, asked }: Props) {
  const columns: readonly Column<OpenDate>[] = [
    {
      head: "Day",
      kind: "name",
      cell: ({ day }) => (
        <a href={`/dates?on=${day}`} aria-current={day === asked ? "date" : undefined}>
          {withWeekday(day)}
        </a>
      ),
    },
    {
      head: "Can promise",
      unit: "stems",
      kind: "number",
      phone: "first",
      cell: ({ poorYearStems }) => (
        <>
          {poorYearStems > 0 ? <strong>{inWholes(poorYearStems)}</strong> : <span className="short-word">none</span>}
          <span className="on-phone"> can be promised</span>
        </>
      ),
    },
    {
      head: "Likely",
      unit: "stems",
      kind: "number",
      cell: ({ focalStems }) => (
        <>
          {inWholes(focalStems)}
          <span className="on-phone"> likely</span>
        </>
      ),
    },
    { head: "By colour", className: "colours", cell: ({ byColour }) => <StemsByColour byColour={byColour} /> },
    {
      head: "Bookings",
      cell: ({ day, shortFocalStems }) => <Booked bookings={bookingsOf(day)} shortFocalStems={shortFocalStems} />,
    },
    {
      head: "Take it",
      kind: "tool",
      cell: ({ day }) => (
        <a className="button" href={`/bookings/new?on=${day}`}>
          Book<span className="visually-hidden"> {withWeekday(day)}</span>
        </a>
      ),
    },
  ];
  return (
    <Table
      caption="Focal stems left, Saturday by Saturday"
      className="date-rows"
      columns={columns}
      groups={monthsOf(dates).map(({ month, dates: rows }) => ({ title: month, rows }))}
      keyOf={({ day }) => day}
      rowClass={({ day }) => (day === asked ? "asked" : undefined)}
      isNarrow
    />
  );
}

const StemsByColour = ({ byColour }: Pick<OpenDate, "byColour">) =>
  byColour
    .filter(({ stems }) => stems > 0)
    .map(({ colour, stems }) => (
      <span key={colour}>
        {inWholes(stems)} <ColourWord colour={colour} />
      </span>
    ));

const Booked = ({ bookings, shortFocalStems }: { bookings: readonly Booking[]; shortFocalStems: number }) => (
  <>
    {bookings.length === 0 ? (
      <span className="soft">nothing booked</span>
    ) : (
      `${countOf(bookings.length, "booking")} that week`
    )}
    {shortFocalStems > 0 && <span className="short-word">, {inWholes(shortFocalStems)} focal short</span>}
  </>
);
