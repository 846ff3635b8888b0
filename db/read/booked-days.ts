import type { FarmDatabase } from "#db/client";
import { booking } from "#db/schema/bookings";
import { type Day, parseDay } from "#lib/domain/day";

/** The bookings with the days of their events, and no more of the farm: what is counted in the field need not wait for all of it to be read. */
export const bookedDays = (database: FarmDatabase): { readonly id: number; readonly eventOn: Day }[] =>
  database
    .select({ id: booking.id, eventOn: booking.eventOn })
    .from(booking)
    .all()
    .map(({ id, eventOn }) => ({ id, eventOn: parseDay(eventOn) }));
