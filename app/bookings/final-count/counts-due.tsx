import { type Day, inShort } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { finalCountOf, finalCountsDue } from "#lib/plan/road/final-count";
import { countsDueInWords } from "#lib/plan/words/final-count-words";
import { countOf } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { StateSign } from "../../ui/state-sign";
import { takeFinalCount } from "./final-count-actions";

/** Rows that are shown before the rest is asked for. */
const ROWS_AT_FIRST = 3;

type Props = { readonly snapshot: Pick<Snapshot, "bookings" | "farm" | "recipes">; readonly today: Day };

/** Whose final count is due, each with the tap that takes its pieces as final. */
export function CountsDue({ snapshot: { bookings, farm, recipes }, today }: Props) {
  const due = finalCountsDue(bookings, farm, today);
  if (due.length === 0) return null;
  const rows = due.map((booking) => (
    <li key={booking.id}>
      <span>
        <a href={`/bookings/${booking.id}`}>{booking.client}</a>, {inShort(booking.eventOn)}:{" "}
        {countOf(finalCountOf(booking, recipes, today).finalStems ?? 0, "stem")} as it stands
      </span>
      <Form
        action={takeFinalCount}
        hidden={{ bookingId: booking.id }}
        submit="It is final"
        label={`The final count of ${booking.client}`}
        isQuiet
      />
    </li>
  ));
  return (
    <section className="counts-due" aria-label="Final counts due">
      <p className="state risk told">
        <StateSign of="risk" />
        <span>{countsDueInWords(due)}: ask, enter what changed, and take the pieces as final.</span>
      </p>
      <ul className="done-rows">{rows.slice(0, ROWS_AT_FIRST)}</ul>
      {rows.length > ROWS_AT_FIRST && (
        <details className="fold">
          <summary>{rows.length - ROWS_AT_FIRST} more due</summary>
          <ul className="done-rows">{rows.slice(ROWS_AT_FIRST)}</ul>
        </details>
      )}
    </section>
  );
}
