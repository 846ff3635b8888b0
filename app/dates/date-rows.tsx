import type { Booking } from "#lib/domain/booking";
import { type Day, withWeekday } from "#lib/domain/day";
import type { OpenDate } from "#lib/plan/chance/open-dates";
import { ColourWord } from "../ui/colour-words";
import { countOf, inWholes } from "../ui/numbers";
import { bandInShort } from "./band-words";
import { monthsOf } from "./months";

type Props = { dates: readonly OpenDate[]; bookingsOf: (day: Day) => readonly Booking[]; asked: Day | null };

/** The numbers of the strip: each Saturday with its stems left, their colours, and who has booked its week; a list on a phone. */
export function DateRows({ dates, bookingsOf, asked }: Props) {
  const hasBands = dates.some(({ band }) => band !== null);
  const columnCount = hasBands ? 6 : 5;
  return (
    <table className="date-rows">
      <caption>Focal stems left, Saturday by Saturday</caption>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col" className="number">
            Left, stems
          </th>
          {hasBands && (
            <th scope="col" className="number">
              Poor to good season, stems
            </th>
          )}
          <th scope="col">By colour</th>
          <th scope="col">Bookings</th>
          <th scope="col">
            <span className="visually-hidden">Take it</span>
          </th>
        </tr>
      </thead>
      {monthsOf(dates).map(({ month, dates: ofMonth }) => (
        <tbody key={month}>
          <tr className="month-row">
            <th scope="rowgroup" colSpan={columnCount}>
              {month}
            </th>
          </tr>
          {ofMonth.map((date) => (
            <DateRow
              key={date.day}
              date={date}
              bookings={bookingsOf(date.day)}
              hasBands={hasBands}
              isAsked={date.day === asked}
            />
          ))}
        </tbody>
      ))}
    </table>
  );
}

type RowProps = { date: OpenDate; bookings: readonly Booking[]; hasBands: boolean; isAsked: boolean };

function DateRow({
  date: { day, focalStems, byColour, band, shortFocalStems },
  bookings,
  hasBands,
  isAsked,
}: RowProps) {
  return (
    <tr className={isAsked ? "asked" : undefined}>
      <th scope="row">
        <a href={`/dates?on=${day}`} aria-current={isAsked ? "date" : undefined}>
          {withWeekday(day)}
        </a>
      </th>
      <td className="number">
        {focalStems > 0 ? <strong>{inWholes(focalStems)}</strong> : <span className="short-word">none</span>}
        <span className="on-phone"> left</span>
      </td>
      {hasBands && <td className="number">{band && bandInShort(band)}</td>}
      <td className="colours">
        {byColour
          .filter(({ stems }) => stems > 0)
          .map(({ colour, stems }) => (
            <span key={colour}>
              {inWholes(stems)} <ColourWord colour={colour} />
            </span>
          ))}
      </td>
      <td>
        {bookings.length === 0 ? (
          <span className="soft">nothing booked</span>
        ) : (
          `${countOf(bookings.length, "booking")} that week`
        )}
        {shortFocalStems > 0 && <span className="short-word">, {inWholes(shortFocalStems)} focal short</span>}
      </td>
      <td>
        <a className="button" href={`/bookings/new?on=${day}`}>
          Book<span className="visually-hidden"> {withWeekday(day)}</span>
        </a>
      </td>
    </tr>
  );
}
