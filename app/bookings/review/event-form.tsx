import { inFull } from "#lib/domain/day";
import type { EventReview, RoleReview } from "#lib/plan/learning/review/event-review";
import { countOf } from "#lib/plan/words/numbers";
import { cutSourceInWords, hadInWords } from "#lib/plan/words/review-words";
import { Form } from "../../ui/form.client";
import { NumberField } from "../../ui/form-fields.client";
import { saveReview } from "./review-actions";

/** What became of an event's stems, to be said with one tap where all were used, and role by role where some were not. */
export const EventForm = ({ event }: { event: EventReview }) => (
  <Form
    action={saveReview}
    label={`Review ${event.booking.client}`}
    hidden={{
      bookingId: event.booking.id,
      planned: JSON.stringify(event.roles.map(({ role, plannedStems }) => [role, plannedStems])),
    }}
    isQuiet
  >
    <h3>
      <a href={`/bookings/${event.booking.id}`}>{event.booking.client}</a>
    </h3>
    <p>
      {inFull(event.booking.eventOn)}: {hadInWords(event.roles)}.
    </p>
    <p className="note">{cutSourceInWords(event)}</p>
    <button type="submit" className="main" name="all" value="yes">
      All used
    </button>
    <details>
      <summary>Some were thrown away, or the numbers are others</summary>
      {event.roles.map((role) => (
        <RoleFields key={role.role} client={event.booking.client} role={role} />
      ))}
      <button type="submit" className="review-save">
        Save the numbers
      </button>
    </details>
  </Form>
);

const RoleFields = ({ role, client }: { role: RoleReview; client: string }) => (
  <fieldset className="review-role">
    <legend>
      {role.role} <small>{countOf(role.plannedStems, "stem")} planned</small>
    </legend>
    <div className="review-fields">
      <Stems name={`cut.${role.role}`} label="Cut" of={`${role.role}, ${client}`} stems={role.cutStems} />
      <Stems name={`bought.${role.role}`} label="Bought" of={`${role.role}, ${client}`} stems={role.boughtStems} />
      <Stems
        name={`thrownAway.${role.role}`}
        label="Thrown away"
        of={`${role.role}, ${client}`}
        stems={role.thrownAwayStems}
      />
    </div>
  </fieldset>
);

type StemsProps = { name: string; label: string; of: string; stems: number | null };

const Stems = ({ name, label, of, stems }: StemsProps) => (
  <NumberField name={name} label={label} listedAs={`${label}: ${of}`} value={stems === null ? "" : String(stems)} />
);
