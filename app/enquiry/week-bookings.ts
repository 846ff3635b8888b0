import { type Day, mondayOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { asksForStems } from "#lib/plan/road/lapsed";

/** The bookings of the week that a day lies in, in order of their day. Those that ask for nothing, cancelled or lapsed, are left out. */
export function weekBookings({ bookings }: Snapshot, today: Day): (day: Day) => readonly Booking[] {
  const byMonday = new Map<Day, Booking[]>();
  for (const booking of bookings) {
    if (!asksForStems(booking, today)) continue;
    const monday = mondayOf(booking.eventOn);
    const week = byMonday.get(monday) ?? [];
    byMonday.set(monday, week);
    week.push(booking);
  }
  for (const week of byMonday.values()) week.sort((a, b) => (a.eventOn < b.eventOn ? -1 : 1));
  return (day) => byMonday.get(mondayOf(day)) ?? [];
}
