import { and, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { review } from "#db/schema/reviews";
import type { ReviewRecord } from "#lib/domain/farm-records";
import type { ReviewDraft } from "#lib/domain/records/review";
import { counted, known } from "./known";
import { BookingIds } from "./names";
import { addRow, changeRow, removeRow } from "./put-row";
import { Refusals, refuseTwice } from "./refusal";
import { type Written, write } from "./write";

/**
 * Records what became of the stems of an event, all roles as one change, and gives their ids. Each takes the place of what was recorded of the same
 * booking and role. Refused when a booking is not on the farm.
 */
export const recordReviews = (database: FarmDatabase, drafts: readonly ReviewDraft[]): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const ids = refusals.each("reviews", drafts, (draft) => putReview(database, draft));
    refusals.end();
    const events = [...new Set(drafts.map(({ bookingId }) => bookingId))];
    const of = events.length === 1 ? known(database, "booking", events[0]) : counted(events.length, "event");
    const thrownAway = drafts.reduce((sum, { thrownAwayStems }) => sum + thrownAwayStems, 0);
    const what = thrownAway === 0 ? "all stems used" : `${counted(thrownAway, "stem")} thrown away`;
    return { title: `reviewed ${of}: ${what}`, result: ids };
  });

/** Takes back what was recorded of an event: it stands as if nobody had reviewed it. */
export const removeReviews = (database: FarmDatabase, bookingId: number): Written =>
  write(database, () => {
    const client = known(database, "booking", bookingId);
    const rows = database.select({ id: review.id }).from(review).where(eq(review.bookingId, bookingId)).all();
    for (const { id } of rows) removeRow(database, review, id);
    return { title: `took back the review of ${client}`, result: bookingId };
  });

/** Writes reviews of an upload inside a change that is open, each in place of the one whose id it has; gathers what is refused. */
export function importReviews(
  database: FarmDatabase,
  records: readonly ReviewRecord[] | undefined,
  refusals: Refusals,
): void {
  const bookings = new BookingIds(database);
  refusals.each("reviews", records, ({ id, client, eventOn, ...counted }) => {
    const draft = { ...counted, bookingId: bookings.idOf({ client, eventOn }) };
    if (id === undefined) putReview(database, draft);
    else replaceReview(database, id, draft);
  });
}

function replaceReview(database: FarmDatabase, id: number, draft: ReviewDraft): void {
  known(database, "review", id);
  refuseTwice("role", "this booking and role have a review already: change that one", () =>
    changeRow(database, review, id, draft),
  );
}

/** Writes a review inside a change that is open, in the place of the one of the same booking and role; gives its id. */
function putReview(database: FarmDatabase, draft: ReviewDraft): number {
  known(database, "booking", draft.bookingId, "bookingId");
  const before = database
    .select({ id: review.id })
    .from(review)
    .where(and(eq(review.bookingId, draft.bookingId), eq(review.role, draft.role)))
    .get();
  if (!before) return addRow(database, review, draft);
  changeRow(database, review, before.id, draft);
  return before.id;
}
