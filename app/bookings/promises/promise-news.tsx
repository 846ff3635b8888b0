import type { Day } from "#lib/domain/day";
import type { Plan } from "#lib/plan/road/plan";
import { promiseState } from "#lib/plan/road/promise-state";
import { brokenStems } from "#lib/plan/road/promises";
import { bookingsOf } from "#lib/plan/road/seasons";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { Form } from "../../ui/form.client";
import { StateSign } from "../../ui/state-sign";
import { promiseAllCovered } from "./promise-actions";
import { unpromised } from "./unpromised";

/** What must be said of a season's promises of events still to come: those that the plan cannot keep, by name, and the bookings that were promised nothing yet. */
export function PromiseNews({ plan: { match, seasonYear }, today }: { plan: Plan; today: Day }) {
  const broken = brokenStems(match) > 0 ? brokenBookings(match, seasonYear, today) : [];
  const open = unpromised(match, seasonYear, today);
  const coveredStems = open.reduce((sum, { id }) => sum + promiseState(match, id).coveredStems, 0);
  return (
    <>
      {broken.length > 0 && (
        <p className="state short told">
          <StateSign of="short" />
          <span>
            Promised, and no longer in the plan:{" "}
            {broken.map(({ booking, stems }, index) => (
              <span key={booking.id}>
                {index > 0 && ", "}
                {inWholes(stems)} for <a href={`/bookings/${booking.id}`}>{booking.client}</a>
              </span>
            ))}
            .
          </span>
        </p>
      )}
      {open.length > 0 && (
        <div className="promise">
          <p className="state risk told">
            <StateSign of="risk" />
            <span>
              {countOf(open.length, "confirmed booking")} {open.length === 1 ? "has" : "have"} nothing promised yet: a
              later one may take their stems. The plan covers {countOf(coveredStems, "stem")} of theirs.
            </span>
          </p>
          <Form
            action={promiseAllCovered}
            hidden={{ seasonYear }}
            submit={`Promise ${open.length === 1 ? "it" : "them"} what is covered`}
            label="Promises"
            isQuiet
          />
        </div>
      )}
    </>
  );
}

const brokenBookings = (match: Plan["match"], seasonYear: number, today: Day) =>
  bookingsOf(match, seasonYear)
    .filter(({ eventOn }) => eventOn >= today)
    .map((booking) => ({ booking, stems: promiseState(match, booking.id).brokenStems }))
    .filter(({ stems }) => stems > 0);
