import { type Day, mondayOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";

/** The bookings of the week that a day lies in, in order of their day. Cancelled ones take nothing and are left out. */
export function weekBookings({ bookings }: Snapshot): (day: Day) => readonly Booking[] {
  const byMonday = new Map<Day, Booking[]>();
  for (const booking of bookings) {
    if (booking.status === "cancelled") continue;
    const monday = mondayOf(booking.eventOn);
    const week = byMonday.get(monday) ?? [];
    byMonday.set(monday, week);
    week.push(booking);
  }
  for (const week of byMonday.values()) week.sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1));
  return (day) => byMonday.get(mondayOf(day)) ?? [];
}
