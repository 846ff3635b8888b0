import type { Day } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { isCutFor } from "./lapsed";

/**
 * A draft with the day it is taken on as it will be saved [T7]: a new booking is taken today, and one that is brought forward, taken back after it was
 * cancelled, or held or confirmed after it was an enquiry is taken anew, since nothing was cut for it on days that have passed. A day that the draft names itself stands.
 * @param bookingId  the booking that the draft would replace; null for a new one
 */
export function takenToday(
  { bookings }: Pick<Snapshot, "bookings">,
  draft: BookingDraft,
  bookingId: number | null,
  today: Day,
): BookingDraft {
  const before = bookings.find(({ id }) => id === bookingId);
  if (!before) return { ...draft, takenOn: draft.takenOn ?? today };
  const isReopened = before.status === "cancelled" && draft.status !== "cancelled";
  const isTakenAnew = isReopened || (isCutFor(draft) && !isCutFor(before)) || draft.eventOn < before.eventOn;
  return isTakenAnew && draft.takenOn === before.takenOn ? { ...draft, takenOn: today } : draft;
}
