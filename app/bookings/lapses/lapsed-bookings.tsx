import { type Day, withWeekday } from "#lib/domain/day";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import type { BookingLine } from "../booking-line";
import { reopenBooking } from "./lapse-actions";

/** The enquiries and holds that have lapsed, folded: they ask for nothing, and a tap reopens one whose event is still to come. */
export function LapsedBookings({ lines, today }: { lines: readonly BookingLine[]; today: Day }) {
  if (lines.length === 0) return null;
  return (
    <details className="fold">
      <summary>
        {countOf(lines.length, "booking")} lapsed <small>nothing asked</small>
      </summary>
      <ul className="done-rows">
        {lines.map(({ booking: { id, client, status, eventOn, lapsesAfter } }) => (
          <li key={id}>
            <span>
              <a href={`/bookings/${id}`}>{client}</a>, {withWeekday(eventOn)}
              <small>
                {" "}
                {status}, lapsed after {lapsesAfter && withWeekday(lapsesAfter)}
              </small>
            </span>
            {eventOn >= today && (
              <Form
                action={reopenBooking}
                hidden={{ bookingId: id }}
                submit="Reopen"
                label={`Reopen the ${status === "held" ? "hold" : "enquiry"} of ${client}`}
                isQuiet
              />
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}
