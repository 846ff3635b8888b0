import { type Day, inFull } from "#lib/domain/day";
import { countOf } from "#lib/plan/words/numbers";
import { CountedRow } from "../look/counted-row";
import { ColourWords } from "../ui/colour-words";
import { ShortState } from "../ui/short-state";
import { type BookingLine, STEMS_A_MARK } from "./booking-line";
import { Posy } from "./posy";

/** The next day with an event: its bookings with their colours, what they get, and what is short. */
export function NextEvent({ lines, today }: { lines: readonly BookingLine[]; today: Day }) {
  if (lines.length === 0)
    return (
      <section className="plate" aria-labelledby="next">
        <h2 id="next">No event is to come this season</h2>
        <p>What was booked stands below.</p>
      </section>
    );
  const [{ booking: first }] = lines;
  const ofDay = lines.filter(({ booking }) => booking.eventOn === first.eventOn);
  return (
    <section className="plate next-event" aria-labelledby="next">
      <h2 id="next">
        Next, {first.eventOn === today ? "today" : `on ${inFull(first.eventOn)}`}: {countOf(ofDay.length, "event")}
      </h2>
      {ofDay.map((line) => (
        <Event key={line.booking.id} line={line} />
      ))}
    </section>
  );
}

const Event = ({ line: { booking, needStems, shortStems, colours } }: { line: BookingLine }) => (
  <article className="next-line">
    <Posy colours={booking.palette} />
    <div>
      <h3>
        <a href={`/bookings/${booking.id}`}>{booking.client}</a>
      </h3>
      <ColourWords colours={booking.palette} />
    </div>
    <p className="next-figures">
      {booking.status}, <b>{countOf(needStems, "stem")}</b>
      <br />
      {needStems > 0 && <ShortState stems={shortStems} all="all covered" />}
    </p>
    <CountedRow covered={colours} shortStems={shortStems} stemsPerMark={STEMS_A_MARK} />
  </article>
);
