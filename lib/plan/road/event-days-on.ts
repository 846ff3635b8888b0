import { addDays, type Day, yearOf } from "#lib/domain/day";
import { type EventDays, eventDaysOf } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { asksForStems, isCutFor } from "./lapsed";
import { deliveriesOf, isDelivery } from "./orders";

/** Bookings and deliveries of standing orders of which a day is the last to cut for, the day of design, and that of delivery. The earlier event first. */
export type EventDaysOn = Readonly<Record<"lastCut" | "design" | "deliver", readonly Booking[]>>;

/**
 * What a day is to the events of a farm [M12]: those of bookings that are cut for [N5], and standing orders, of which only pieces are made up. What is worn may
 * be cut later than the last cut that is told here.
 */
export function eventDaysOn({ farm, bookings, standingOrders }: Snapshot, day: Day): EventDaysOn {
  const year = yearOf(day);
  const events = [
    ...bookings.filter((booking) => isCutFor(booking) && asksForStems(booking, day)),
    ...deliveriesOf(standingOrders, [year, year + 1]).map(({ booking }) => booking),
  ].sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : 0));
  const on = (name: keyof EventDays) =>
    events.filter(
      (booking) => booking.eventOn >= day && addDays(booking.eventOn, -eventDaysOf(farm, booking)[name]) === day,
    );
  return {
    lastCut: on("leadDays").filter((booking) => !isDelivery(booking)),
    design: on("designDays").filter((booking) => !isDelivery(booking) || booking.pieces.length > 0),
    deliver: on("deliverDays"),
  };
}
