import type { Booking } from "#lib/domain/records/booking";
import type { Plan } from "#lib/plan/road/plan";
import { promiseState } from "#lib/plan/road/promise-state";
import { needInWords } from "#lib/plan/words/gap-words";
import { countOf, inWholes } from "#lib/plan/words/numbers";
import { promiseInWords } from "#lib/plan/words/promise-words";
import { Form } from "../../ui/form.client";
import { StateSign } from "../../ui/state-sign";
import { promiseCovered } from "./promise-actions";

/** What a confirmed booking was promised, need by need, and the button that makes the promise what the plan covers. */
export function PromiseCard({ plan: { match, snapshot }, booking }: { plan: Plan; booking: Booking }) {
  const state = promiseState(match, booking.id);
  const names = new Map(snapshot.crops.map(({ id, name }) => [id, name.toLowerCase()]));
  const isBroken = state.brokenStems > 0;
  const isOffered = state.coveredStems > 0 && (isBroken || state.moreStems > 0);
  return (
    <section className="promise" aria-label="Promised">
      <p className={`state told ${isBroken ? "short" : state.promisedStems > 0 ? "covered" : "risk"}`}>
        <StateSign of={isBroken ? "short" : state.promisedStems > 0 ? "tick" : "risk"} />
        <span>{promiseInWords(state)}</span>
      </p>
      {isOffered && (
        <Form
          action={promiseCovered}
          hidden={{ bookingId: booking.id }}
          submit={`${state.coveredStems < state.promisedStems ? "Lower the promise to" : "Promise"} ${countOf(state.coveredStems, "stem")}`}
          label="The promise"
          isQuiet
        />
      )}
      {state.promisedStems > 0 && (
        <details open={isBroken}>
          <summary className="small">Promised, need by need</summary>
          <ul className="leaders">
            {state.needs.map(({ need, brokenStems }) => (
              <li key={need.kind}>
                <span>{needInWords(need, (id) => names.get(id) ?? "crop")}</span>
                <span className="dots" />
                <b className="number">
                  {inWholes(need.promisedStems)} of {inWholes(need.stems)}
                  {brokenStems > 0 && <span className="short-word">, {inWholes(brokenStems)} missing</span>}
                </b>
              </li>
            ))}
          </ul>
        </details>
      )}
      <p className="note">No later booking takes what is promised, as long as the stems are there.</p>
    </section>
  );
}
