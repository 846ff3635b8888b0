import { type Day, withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { type EventDaysOn, eventDaysOn } from "#lib/plan/road/event-days-on";
import { isDelivery } from "#lib/plan/road/orders";
import { LinkIfTheirs } from "../people/link-if-theirs";

const WORDS: Readonly<Record<keyof EventDaysOn, string>> = {
  deliver: "Deliver today",
  design: "Design today",
  lastCut: "Last day to cut for",
};

/** What is delivered and made up today, and for whom nothing is cut any more tomorrow. Nothing where the day is none of these to anybody. */
export function EventsOfDay({ snapshot, today }: { snapshot: Snapshot; today: Day }) {
  const found = eventDaysOn(snapshot, today);
  const named = (["deliver", "design", "lastCut"] as const).filter((kind) => found[kind].length > 0);
  if (named.length === 0) return null;
  return (
    <ul className="notice events-of-day">
      {named.map((kind) => (
        <li key={kind}>
          <b>{WORDS[kind]}</b>{" "}
          {found[kind].map((booking, index) => (
            <span key={booking.id}>
              {index > 0 && ", "}
              <Named booking={booking} today={today} />
            </span>
          ))}
        </li>
      ))}
    </ul>
  );
}

/** The client, with the day of the event where that is another. */
const Named = ({ booking, today }: { booking: Booking; today: Day }) => (
  <>
    {isDelivery(booking) ? (
      booking.client
    ) : (
      <LinkIfTheirs href={`/bookings/${booking.id}`}>{booking.client}</LinkIfTheirs>
    )}
    {booking.eventOn !== today && ` (${withWeekday(booking.eventOn)})`}
  </>
);
