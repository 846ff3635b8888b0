import { cropAs } from "#lib/domain/crop-of-variety";
import { type Day, toDay, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import { holdOf, lastEventDay } from "./hold-window";
import type { PurchaseLine } from "./purchase-slips";
import { lastOpenDay, openDayOf, stemsOfPurchase } from "./purchases";

/** Why what was ordered for an event cannot serve it: past its days by then, or not open yet when it is made up. `opensAsItComes`: it is open on the day it arrives. */
export type Mistimed = { readonly eventOn: Day } & (
  | { readonly kind: "early"; readonly keepsUntil: Day }
  | { readonly kind: "late"; readonly openOn: Day; readonly designOn: Day; readonly opensAsItComes: boolean }
);

/** How an order misses the event it is for, by the days on which its stems may open [ST3] [M1]; null where it does not, and where it is for no event that stands. */
export function mistimed(line: PurchaseLine, farm: Farm): Mistimed | null {
  const { purchase, booking, variety, crop } = line;
  if (booking === null || booking.status === "cancelled" || stemsOfPurchase(purchase) === 0) return null;
  const hold = holdOf(cropAs(variety, crop), farm);
  const { eventOn } = booking;
  const openOn = openDayOf(purchase);
  const openDay = toDayNumber(openOn);
  const designDay = lastOpenDay(farm, booking);
  if (openDay > designDay)
    return { kind: "late", eventOn, openOn, designOn: toDay(designDay), opensAsItComes: purchase.daysToOpen === 0 };
  return lastEventDay(openDay, hold) < toDayNumber(eventOn)
    ? { kind: "early", eventOn, keepsUntil: toDay(lastEventDay(openDay, hold)) }
    : null;
}
