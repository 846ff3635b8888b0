import { addDays, type Day, yearOf } from "#lib/domain/day";
import { eventReviews } from "#lib/plan/learning/review/event-review";
import { toReviewInWords } from "#lib/plan/words/review-words";
import { loadPlan } from "../../load";
import { mayOpen } from "../../people/allowed";
import { roleNow } from "../../people/who";

/** Days after an event within which its review is offered unasked. */
const DAYS_BACK = 14;

/** The way to the events of the last two weeks that nobody has reviewed. Nothing where there is none. */
export function ToReview({ now }: { now: Day }) {
  if (!mayOpen(roleNow(), "/bookings/review")) return null;
  const open = eventReviews(loadPlan(yearOf(now))).filter(
    ({ isReviewed, booking }) => !isReviewed && booking.eventOn >= addDays(now, -DAYS_BACK),
  );
  if (open.length === 0) return null;
  return (
    <p className="no-print">
      <a className="button" href={`/bookings/review?season=${yearOf(now)}`}>
        {toReviewInWords(open.length)} of the last two weeks
      </a>
    </p>
  );
}
