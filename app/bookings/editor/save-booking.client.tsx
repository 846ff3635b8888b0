"use client";

import { inWholes } from "#lib/plan/words/numbers";
import { useForm } from "../../ui/form-context.client";
import { type CoverageAnswer, isFirstAwaited } from "./use-coverage.client";

/** The button that saves, beside what is short, so that it is in sight from the first piece on. */
export function SaveBooking({ submit }: { submit: string }) {
  const { isPending } = useForm("the button that saves a booking");
  return (
    <div className="save-row">
      <button type="submit" className="main" disabled={isPending}>
        {isPending ? "Saving…" : submit}
      </button>
      <a href="/bookings">Leave without saving</a>
    </div>
  );
}

/** On a phone the answer and the button stand over the thumb's bar, however long the pieces are. */
export function ShortBar({ answer }: { answer: CoverageAnswer }) {
  const { coverage, isStale } = answer;
  const { isPending } = useForm("the bar of a booking");
  return (
    <div className="short-bar" data-waits={isStale}>
      <span>
        {isFirstAwaited(answer) ? (
          "Working it out…"
        ) : !coverage || coverage.stems === 0 ? (
          "Nothing asked for yet"
        ) : coverage.shortStems > 0 ? (
          <>
            <b className="short-word">{inWholes(coverage.shortStems)}</b> of {inWholes(coverage.stems)} short
          </>
        ) : (
          <>
            <b>{inWholes(coverage.stems)}</b> stems, <span className="good-word">all covered</span>
          </>
        )}
      </span>
      <button type="submit" className="main" disabled={isPending}>
        Save
      </button>
    </div>
  );
}
