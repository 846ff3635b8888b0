import { toDay, toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Review } from "#lib/domain/records/review";
import { ROLES, type Role } from "#lib/domain/words";
import { asksForStems } from "#lib/plan/road/lapsed";
import type { Plan } from "#lib/plan/road/plan";
import { seasonOfBooking } from "#lib/plan/road/seasons";
import { type EventStems, eventStems } from "./event-stems";

/**
 * What became of the stems of a role at an event, in stems. Where nobody has reviewed it yet, `thrownAwayStems` is null, and what was cut and bought
 * is what the plan makes of the records [V1]. `stemCents` is what a stem of it costs to buy, in cents, a fraction.
 */
export type RoleReview = {
  readonly role: Role;
  readonly plannedStems: number;
  readonly cutStems: number;
  readonly boughtStems: number;
  readonly thrownAwayStems: number | null;
  readonly stemCents: number;
};

/** An event that is over. `isReviewed`: every role that it asks for has its review. `isCutRecorded`: some cut for it was recorded. */
export type EventReview = {
  readonly booking: Booking;
  readonly roles: readonly RoleReview[];
  readonly isReviewed: boolean;
  readonly isCutRecorded: boolean;
};

/**
 * The events of a season that are over on the plan's day, the latest first, with what became of their stems [V1]. Enquiries and cancelled bookings had no
 * event. A plan that knows no day has none behind it.
 */
export function eventReviews(plan: Plan): EventReview[] {
  const { snapshot, seasonYear, today } = plan;
  if (today === null) return [];
  const stems = eventStems(plan);
  const cutFor = new Set(snapshot.cuts.map(({ bookingId }) => bookingId));
  return snapshot.bookings
    .filter((row) => seasonOfBooking(row) === seasonYear && toDayNumber(row.eventOn) < today && isHeldEvent(row, today))
    .map((booking): EventReview => {
      const roles = rolesOf(
        stems.get(booking.id) ?? new Map(),
        snapshot.reviews.filter(({ bookingId }) => bookingId === booking.id),
      );
      const isReviewed = roles.length > 0 && roles.every(({ thrownAwayStems }) => thrownAwayStems !== null);
      return { booking, roles, isReviewed, isCutRecorded: cutFor.has(booking.id) };
    })
    .filter(({ roles }) => roles.length > 0)
    .sort((a, b) => (a.booking.eventOn > b.booking.eventOn ? -1 : 1));
}

/** What the stems that were cut and bought for an event cost to buy, in whole cents, each role rounded once. */
export const stemsCostCents = (roles: readonly RoleReview[]): number =>
  roles.reduce(
    (sum, { cutStems, boughtStems, stemCents }) => sum + Math.round((cutStems + boughtStems) * stemCents),
    0,
  );

/** Whether a booking came to an event: enquiries, cancelled bookings and holds that have lapsed did not. */
export const isHeldEvent = (booking: Booking, today: number | null): boolean =>
  booking.status !== "enquiry" && asksForStems(booking, today === null ? null : toDay(today));

function rolesOf(parts: ReadonlyMap<Role, EventStems>, reviews: readonly Review[]): RoleReview[] {
  return ROLES.flatMap((role) => {
    const part = parts.get(role);
    const review = reviews.find((one) => one.role === role);
    if (!part && !review) return [];
    const had = part ? part.cutStems + part.boughtStems : 0;
    const counted = review ?? { plannedStems: 0, cutStems: 0, boughtStems: 0, ...part, thrownAwayStems: null };
    const { plannedStems, cutStems, boughtStems, thrownAwayStems } = counted;
    const stemCents = part && had > 0 ? part.costCents / had : 0;
    return [{ role, plannedStems, cutStems, boughtStems, thrownAwayStems, stemCents }];
  });
}
