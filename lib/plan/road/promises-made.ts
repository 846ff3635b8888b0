import { type Day, toDayNumber, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { PromisedStems } from "#lib/domain/records/promised-stems";
import type { Snapshot } from "#lib/domain/snapshot";
import { plan } from "./plan";
import { coveredPromises } from "./promises";

/** What a booking is promised, need by need. */
export type PromiseMade = { readonly bookingId: number; readonly promises: readonly PromisedStems[] };

/**
 * What is promised when the farm is changed otherwise than by a booking's form, by a sheet or a what-if: each booking that is confirmed by it, or was and now
 * stands on another day, is promised what the plan of the changed farm covers of it, as one saved in its form is [M9]. One that brings a promise of its own keeps that,
 * and one whose event is over is promised nothing.
 */
export function promisesMade(before: Pick<Snapshot, "bookings">, after: Snapshot, today: Day): PromiseMade[] {
  const known = new Map(before.bookings.map((booking) => [booking.id, booking]));
  const signed = after.bookings.filter((booking) => isSignedAnew(booking, known.get(booking.id), today));
  const seasons = [...new Set(signed.map(({ eventOn }) => yearOf(eventOn)))];
  const plans = new Map(seasons.map((year) => [year, plan(after, year, undefined, null, toDayNumber(today))]));
  return signed.flatMap(({ id, eventOn }) => {
    const made = plans.get(yearOf(eventOn));
    const promises = made ? coveredPromises(made.match, id) : [];
    return promises.length > 0 ? [{ bookingId: id, promises }] : [];
  });
}

const isSignedAnew = ({ status, eventOn, promises }: Booking, was: Booking | undefined, today: Day): boolean =>
  status === "confirmed" &&
  eventOn >= today &&
  promises.length === 0 &&
  (was?.status !== "confirmed" || was.eventOn !== eventOn);
