import type { BookingDraft } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { type MatchedSeason, withDraft } from "./draft";
import { keptPromises } from "./promises";

/**
 * A draft with what the booking that it would replace was promised. A promise is of a day and of a signed booking: to one that moves to another day, or
 * was not confirmed, nothing was promised.
 */
export function withOwnPromises(
  { bookings }: Pick<Snapshot, "bookings">,
  draft: BookingDraft,
  bookingId: number | null,
): BookingDraft {
  const before = bookings.find(({ id }) => id === bookingId);
  const isHeldTo = before?.status === "confirmed" && before.eventOn === draft.eventOn;
  return { ...draft, promises: isHeldTo ? before.promises : [] };
}

/** A draft as it is saved: a confirmed one is promised what the plan covers of it, and keeps what it was promised before; any other has no promise [M9]. */
export function promisedDraft(plan: MatchedSeason, draft: BookingDraft, bookingId: number | null): BookingDraft {
  if (draft.status !== "confirmed") return { ...draft, promises: [] };
  const { match, draftId } = withDraft(plan, withOwnPromises(plan.snapshot, draft, bookingId), bookingId);
  return { ...draft, promises: keptPromises(match, draftId) };
}
