import { addDays, type Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { finalCountOf, finalDueOn } from "#lib/plan/road/final-count";
import type { Plan } from "#lib/plan/road/plan";
import { coveredPromises } from "#lib/plan/road/promises";
import { bookingsOf } from "#lib/plan/road/seasons";

/** A week after it was due the last client has been asked; until then it is still due. */
const ASKED_WITHIN_DAYS = 7;
/** Of so many bookings one has changed its pieces since, and never by more than this. */
const CHANGED_OF = 5;
const MORE_PIECES = 2;

/** The bookings of a season whose final count was taken by a day, each with it and with the promise of what the plan covered. One in five has asked for two pieces more since. */
export function settledBookings({ match, seasonYear, snapshot: { farm, recipes } }: Plan, until: Day): Booking[] {
  const due = bookingsOf(match, seasonYear).flatMap((booking) => {
    const dueOn = finalDueOn(booking, farm);
    const isSettled = booking.status === "confirmed" && dueOn !== null && addDays(dueOn, ASKED_WITHIN_DAYS) < until;
    return isSettled ? [{ booking, dueOn }] : [];
  });
  return due
    .sort((a, b) => (a.booking.eventOn < b.booking.eventOn ? -1 : 1))
    .map(({ booking, dueOn }, index) => ({
      ...booking,
      ...finalCountOf(index % CHANGED_OF === 1 ? asItWas(booking) : booking, recipes, dueOn),
      promises: coveredPromises(match, booking.id),
    }));
}

/** The booking before its client asked for more of the piece of which there are most. */
function asItWas(booking: Booking): Booking {
  const most = Math.max(...booking.pieces.map(({ pieceCount }) => pieceCount));
  const changed = booking.pieces.findIndex(({ pieceCount }) => pieceCount === most);
  return {
    ...booking,
    pieces: booking.pieces.map((piece, index) =>
      index === changed ? { ...piece, pieceCount: Math.max(1, most - MORE_PIECES) } : piece,
    ),
  };
}
