import { cropAs } from "#lib/domain/crop-of-variety";
import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import { eventDaysOf } from "#lib/domain/event-days";
import type { Farm } from "#lib/domain/records/farm-settings";
import { holdOf, lastEventDay, servingWindow } from "./hold-window";
import type { PurchaseLine } from "./purchase-slips";
import { openDayOf, stemsOfPurchase } from "./purchases";

/** Why what was ordered for an event cannot serve it: past its days by then, or not open yet. */
export type Mistimed = { readonly eventOn: Day } & (
  | { readonly kind: "early"; readonly keepsUntil: Day }
  | { readonly kind: "late"; readonly openOn: Day }
);

/** How an order misses the event it is for, by the days on which its stems may open [ST3] [M1]; null where it does not, and where it is for no event that stands. */
export function mistimed(line: PurchaseLine, farm: Farm): Mistimed | null {
  const { purchase, booking, variety, crop } = line;
  if (booking === null || booking.status === "cancelled" || stemsOfPurchase(purchase) === 0) return null;
  const hold = holdOf(cropAs(variety, crop), farm);
  const { eventOn } = booking;
  const openOn = openDayOf(purchase);
  const openDay = toDayNumber(openOn);
  const { earliest, latest } = servingWindow(toDayNumber(eventOn), eventDaysOf(farm, booking).leadDays, {
    hold,
    bookingId: booking.id,
  });
  if (openDay > latest) return { kind: "late", eventOn, openOn };
  return openDay < earliest ? { kind: "early", eventOn, keepsUntil: toDay(lastEventDay(openDay, hold)) } : null;
}
