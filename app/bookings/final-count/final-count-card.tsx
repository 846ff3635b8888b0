import type { Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { finalDueOn, sinceFinal } from "#lib/plan/road/final-count";
import { isCutFor, isLapsed } from "#lib/plan/road/lapsed";
import { dueInWords, sinceFinalInWords } from "#lib/plan/words/final-count-words";
import { inTenths } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { StateSign } from "../../ui/state-sign";
import { openFinalCount, takeFinalCount } from "./final-count-actions";

type Props = { readonly snapshot: Pick<Snapshot, "farm" | "recipes">; readonly booking: Booking; readonly today: Day };

/** A booking's final count: when it is due, or what was settled and what changed since. */
export function FinalCountCard({ snapshot: { farm, recipes }, booking, today }: Props) {
  const since = sinceFinal(booking, recipes);
  const due = finalDueOn(booking, farm);
  const isOpen = isCutFor(booking) && booking.status !== "cancelled" && !isLapsed(booking, today);
  if (since === null) {
    if (!isOpen || due === null || booking.eventOn < today) return null;
    return (
      <section className="promise" aria-label="Final count">
        <p className={`state told ${due <= today ? "risk" : "covered"}`}>
          {due <= today && <StateSign of="risk" />}
          <span>The final count {dueInWords(due, today)}.</span>
        </p>
        <Take booking={booking} submit="These pieces are final" />
      </section>
    );
  }
  const isChanged = since.changed.length > 0 || (since.moreStems ?? 0) !== 0;
  return (
    <section className="promise" aria-label="Final count">
      <p className={`state told ${isChanged ? "risk" : "covered"}`}>
        <StateSign of={isChanged ? "risk" : "tick"} />
        <span>{sinceFinalInWords(since)}</span>
      </p>
      {booking.eventOn >= today && (
        <span className="row no-print">
          {isChanged && isOpen && <Take booking={booking} submit="This is final now" />}
          <Form
            action={openFinalCount}
            hidden={{ bookingId: booking.id }}
            submit="Open the count again"
            label="Open the final count again"
            isQuiet
          />
        </span>
      )}
      {booking.finalPieces.length > 0 && (
        <details className="prints-open">
          <summary className="small">What was settled</summary>
          <ul className="leaders">
            {booking.finalPieces.map(({ count, what }) => (
              <li key={what}>
                <span>{what}</span>
                <span className="dots" />
                <b className="number">{inTenths(count)}</b>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

const Take = ({ booking, submit }: { readonly booking: Booking; readonly submit: string }) => (
  <Form action={takeFinalCount} hidden={{ bookingId: booking.id }} submit={submit} label="The final count" isQuiet />
);
