import { type Day, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";

/** The enquiries and holds of a season, from today on, of which nobody has said when they lapse. */
export const withoutLapseDay = (bookings: readonly Booking[], seasonYear: number, today: Day): Booking[] =>
  bookings.filter(
    ({ status, lapsesAfter, eventOn }) =>
      (status === "enquiry" || status === "held") &&
      lapsesAfter === null &&
      eventOn >= today &&
      yearOf(eventOn) === seasonYear,
  );
