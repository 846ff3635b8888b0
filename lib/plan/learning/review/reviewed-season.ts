import { type Day, toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { seasonOfBooking } from "#lib/plan/road/seasons";
import { isHeldEvent } from "./event-review";

/**
 * The season that a review opens on: that of the last event that is over on a day, whose stems can be told; while none is, the year of the day [V1].
 * Next year's, which is planned from November on, has nothing to review.
 */
export function reviewedSeason({ bookings }: Pick<Snapshot, "bookings">, today: Day): number {
  const over = bookings.filter((row) => row.eventOn < today && isHeldEvent(row, toDayNumber(today)));
  return over.length === 0 ? yearOf(today) : Math.max(...over.map(seasonOfBooking));
}
