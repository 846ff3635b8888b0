import { addDays, type Day, toDayNumber, yearOf } from "#lib/domain/day";
import { type EventHabit, eventDaysOf } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import type { Purchase } from "#lib/domain/records/purchase";
import { inOrderOfId, type Snapshot } from "#lib/domain/snapshot";
import type { Stand } from "./supply";

/** Stems that were bought in: those that are for its booking, and those for anybody. `day` is that on which they are open, from which their age counts. */
export type PurchasedStems = {
  readonly purchase: Purchase;
  readonly varietyId: number;
  readonly day: number;
  readonly stand: Stand;
  readonly ownStems: number;
  readonly freeStems: number;
};

/** Stems that came, or that are to come. */
export const stemsOfPurchase = ({ bunchCount, bunchStems, arrivedStems }: Purchase): number =>
  arrivedStems ?? bunchCount * bunchStems;

/** The day from which a purchase can be used: its days to open after it arrived, or is to arrive. */
export const openDayOf = ({ arrivesOn, arrivedOn, daysToOpen }: Purchase): Day =>
  addDays(arrivedOn ?? arrivesOn, daysToOpen);

/** The last day on which stems that were ordered for an event may open: that on which it is made up [ST3]. A day number. */
export const lastOpenDay = (farm: EventHabit, booking: Booking): number =>
  toDayNumber(booking.eventOn) - eventDaysOf(farm, booking).designDays;

/** Purchases that are open in some years, in order of id [ST3]. Of a short delivery the booking's stems come first. */
export const purchasedStems = (
  { purchases }: Pick<Snapshot, "purchases">,
  seasonYears: readonly number[],
): PurchasedStems[] =>
  inOrderOfId(purchases).flatMap((purchase) => {
    const { id, varietyId, bookingId, stemsForBooking } = purchase;
    const openOn = openDayOf(purchase);
    const stems = stemsOfPurchase(purchase);
    if (stems === 0 || !seasonYears.includes(yearOf(openOn))) return [];
    const ownStems = bookingId === null ? 0 : Math.min(stems, stemsForBooking);
    const stock = { id, varietyId, cutOn: openOn, stemCount: stems };
    return {
      ...{ purchase, varietyId, day: toDayNumber(openOn) },
      ...{ stand: { kind: "cooler" as const, stock, purchase }, ownStems, freeStems: stems - ownStems },
    };
  });
