import type { Purchase } from "#lib/domain/records/purchase";
import type { Snapshot } from "#lib/domain/snapshot";
import { booking, day, focal, snapshot } from "../../small-farm";
import { on, shortOf } from "./lived-season";

/** Two weddings on Sat 12 June, of 24 stems and of 10; nothing grows, and three bunches of ten are ordered for the first, to come on Thu 10 June. */
export const bought = (given: Partial<Purchase> = {}): Purchase => ({
  ...{ id: 1, supplier: "Marl Street", orderedOn: day("2027-05-22"), arrivesOn: day("2027-06-10"), varietyId: 1 },
  ...{ bunchCount: 3, bunchStems: 10, bunchCents: 1500, daysToOpen: 0, bookingId: 1, stemsForBooking: 24 },
  ...{ arrivedOn: null, arrivedStems: null },
  ...given,
});
export const ordered = (...purchases: Partial<Purchase>[]): Snapshot =>
  snapshot({
    plantings: [],
    bookings: [booking({ id: 1, stemLines: focal(24) }), booking({ id: 2, stemLines: focal(10) })],
    purchases: purchases.map((given, index) => bought({ ...given, id: index + 1 })),
  });
export const shortOn = (snap: Snapshot, today: string) => shortOf(on(snap, today));
