import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import { STATUSES, type Status } from "#lib/domain/words";

/** A booking that is only expected: it asks like one that there is, and is weighed as the farm says of such [K12]. Never written. */
export type ExpectedBooking = Booking & { readonly likeBookingId: number };

/** What a booking's claim is weighed by: its status, or that it is only expected. */
export type Claim = Status | "expected";
export const CLAIMS: readonly Claim[] = [...STATUSES, "expected"];

export const isExpected = (booking: Booking): booking is ExpectedBooking => "likeBookingId" in booking;

export const claimOf = (booking: Booking): Claim => (isExpected(booking) ? "expected" : booking.status);

/** The weight of a claim: the chance that its stems are wanted; a cancelled booking has none. */
export function weightOf({ statusWeights, winter }: Pick<Farm, "statusWeights" | "winter">, claim: Claim): number {
  if (claim === "cancelled") return 0;
  return claim === "expected" ? winter.expectedWeightShare : statusWeights[claim];
}
