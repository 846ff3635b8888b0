import { withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { ColourStems } from "#lib/plan/road/week-colours";
import { inWholes } from "#lib/plan/words/numbers";
import { CountedRow } from "../look/counted-row";
import { PaletteStrip } from "../ui/palette-strip";
import { ShortState } from "../ui/short-state";

/** A booking with the stems it asks for, those that are short, and those it gets by colour. */
export type BookingLine = {
  readonly booking: Booking;
  readonly needStems: number;
  readonly shortStems: number;
  readonly colours: readonly ColourStems[];
};

/** Stems that one mark stands for on the list of bookings. */
export const STEMS_A_MARK = 20;

/** A booking on one line, two on a phone: day, name, palette, what it gets and lacks, stems, short. The whole line leads to it. */
export function BookingLineRow({ line: { booking, needStems, shortStems, colours } }: { line: BookingLine }) {
  const [weekday, date] = withWeekday(booking.eventOn).split(" ");
  return (
    <li>
      <a className="booking-line" href={`/bookings/${booking.id}`}>
        <span className="line-day">
          {weekday} <b>{date}</b>
        </span>
        <span className="line-name">
          {booking.client} {booking.status !== "confirmed" && <span className="tag">{booking.status}</span>}
        </span>
        <span className="line-palette">
          <PaletteStrip colours={booking.palette} />
        </span>
        {needStems > 0 ? (
          <CountedRow covered={colours} shortStems={shortStems} stemsPerMark={STEMS_A_MARK} />
        ) : (
          <small className="line-nothing">asks for nothing yet</small>
        )}
        <span className="line-stems">{needStems > 0 && inWholes(needStems)}</span>
        <span className="line-short">{needStems > 0 && <ShortState stems={shortStems} />}</span>
      </a>
    </li>
  );
}
