import type { Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Match } from "#lib/plan/road/match";
import { promiseState } from "#lib/plan/road/promise-state";
import { bookingsOf } from "#lib/plan/road/seasons";

/** The confirmed bookings of a season, from today on, that were promised nothing, though the plan covers something of them. */
export const unpromised = (match: Match, seasonYear: number, today: Day): Booking[] =>
  bookingsOf(match, seasonYear).filter(
    ({ id, status, eventOn, promises }) =>
      eventOn >= today && status === "confirmed" && promises.length === 0 && promiseState(match, id).coveredStems > 0,
  );
