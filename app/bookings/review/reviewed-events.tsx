import { withWeekday } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { type EventReview, type RoleReview, stemsCostCents } from "#lib/plan/learning/review/event-review";
import { seasonOfBooking } from "#lib/plan/road/seasons";
import { inWholes } from "#lib/plan/words/numbers";
import { costInWords, usedInWords } from "#lib/plan/words/review-words";
import { Form } from "../../ui/form.client";
import { type Column, Table } from "../../ui/table";
import { EventForm } from "./event-form";
import { takeBackReview } from "./review-actions";

type Props = { events: readonly EventReview[]; changedId: Booking["id"] | null };

/** Events with their reviews, each folded behind its answer; the one to change stands open with its form. */
export function ReviewedEvents({ events, changedId }: Props) {
  if (events.length === 0) return null;
  return (
    <section className="reviewed" aria-labelledby="reviewed">
      <h2 id="reviewed">Reviewed</h2>
      {events.map((event) => (
        <details
          key={event.booking.id}
          id={`event-${event.booking.id}`}
          className="fold"
          open={event.booking.id === changedId}
        >
          <summary>
            {event.booking.client}, {withWeekday(event.booking.eventOn)} <small>{usedInWords(event.roles)}</small>
          </summary>
          <p>{costInWords(stemsCostCents(event.roles), event.booking.priceCents)}</p>
          <Table
            caption={`What became of the stems of ${event.booking.client}`}
            isCaptionHidden
            isNarrow
            columns={COLUMNS}
            rows={event.roles}
            keyOf={({ role }) => role}
          />
          <Form
            action={takeBackReview}
            submit="Take the review back"
            label={`Take back the review of ${event.booking.client}`}
            hidden={{ bookingId: event.booking.id }}
            isQuiet
          />
          {event.booking.id === changedId ? (
            <EventForm event={event} />
          ) : (
            <p className="no-print">
              <a
                href={`/bookings/review?season=${seasonOfBooking(event.booking)}&event=${event.booking.id}#event-${event.booking.id}`}
              >
                Change the numbers<span className="visually-hidden"> of {event.booking.client}</span>
              </a>
            </p>
          )}
        </details>
      ))}
    </section>
  );
}

const COLUMNS: readonly Column<RoleReview>[] = [
  { head: "Role", kind: "name", cell: ({ role }) => role },
  { head: "Planned", kind: "number", cell: ({ plannedStems }) => inWholes(plannedStems) },
  { head: "Cut", kind: "number", cell: ({ cutStems }) => inWholes(cutStems) },
  { head: "Bought", kind: "number", cell: ({ boughtStems }) => inWholes(boughtStems) },
  {
    head: "Used",
    kind: "number",
    cell: ({ cutStems, boughtStems, thrownAwayStems }) => inWholes(cutStems + boughtStems - (thrownAwayStems ?? 0)),
  },
  { head: "Thrown", kind: "number", cell: ({ thrownAwayStems }) => inWholes(thrownAwayStems ?? 0) },
];
