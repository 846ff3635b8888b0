import type { Metadata } from "next";
import { z } from "zod";
import { reviewAdvice } from "#lib/plan/learning/review/advice";
import { eventReviews } from "#lib/plan/learning/review/event-review";
import { countOf } from "#lib/plan/words/numbers";
import { reviewLead } from "#lib/plan/words/review-words";
import { SeasonHeadByAddress } from "../../frame/season-head";
import { loadPlan } from "../../load";
import { mayCall, mayOpen } from "../../people/allowed";
import { roleNow } from "../../people/who";
import { AdviceList } from "./advice-list";
import { EventForm } from "./event-form";
import { ReviewedEvents } from "./reviewed-events";
import { seasonAsked } from "./season-asked";

export const metadata: Metadata = { title: "Review" };

/** Events asked about at once: those of a week or two. The others are folded. */
const FIRST = 4;

const query = z.object({ event: z.coerce.number().int().nullable().catch(null) });

/** What became of the stems of events that are over: asked with one tap, and what it suggests for the next ones. `event` in the address: the booking whose review is to change. */
export default async function ReviewPage({ searchParams }: { searchParams: Promise<Record<string, unknown>> }) {
  const asked = await searchParams;
  const { event: changedId } = query.parse(asked);
  const year = seasonAsked(asked);
  const plan = loadPlan(year);
  const events = eventReviews(plan);
  const open = events.filter(({ isReviewed }) => !isReviewed);
  const done = events.filter(({ isReviewed }) => isReviewed);
  const older = open.slice(FIRST);
  return (
    <>
      <p className="crumb">
        <a href="/bookings">Bookings</a>
      </p>
      <SeasonHeadByAddress title={`Review of ${year}`} seasonYear={year} path="/bookings/review" />
      <p className="lead">{reviewLead(open.length, done.length)}</p>
      {mayCall(roleNow(), "bookings/review/review-actions.ts#adoptRecipe") && (
        <AdviceList advice={reviewAdvice(plan.snapshot, year)} seasonYear={year} />
      )}
      {open.length > 0 && <h2 className="visually-hidden">Not reviewed yet</h2>}
      <Events events={open.slice(0, FIRST)} />
      {older.length > 0 && (
        <details className="fold">
          <summary>{countOf(older.length, "earlier event")} not reviewed</summary>
          <Events events={older} />
        </details>
      )}
      {mayOpen(roleNow(), "/bookings/season") && (
        <p>
          <a href={`/bookings/season?season=${year}`}>What became of all stems of {year}, crop by crop</a>
        </p>
      )}
      <ReviewedEvents events={done} changedId={changedId} />
      {done.length > 0 && (
        <p className="note">
          Stems are counted at what they would cost to buy, the farm’s own too. Where an event is not reviewed, what was
          cut follows the records, and what fell short counts as bought.
        </p>
      )}
    </>
  );
}

const Events = ({ events }: { events: ReturnType<typeof eventReviews> }) => (
  <ul className="review-events">
    {events.map((event) => (
      <li key={event.booking.id} className="card">
        <EventForm event={event} />
      </li>
    ))}
  </ul>
);
