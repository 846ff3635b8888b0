import fc from "fast-check";
import { addDays, type Day } from "#lib/domain/day";
import { MOVE_KINDS } from "#lib/domain/records/cooler-move";

/** What the records of the store are drawn from, which differs between what the domain allows and what a sheet can say. */
type Of = {
  readonly day: fc.Arbitrary<Day>;
  readonly varietyId: fc.Arbitrary<number>;
  readonly bookingId: fc.Arbitrary<number>;
};

/** A move out of the cooler. */
export const anyMove = ({ day, varietyId, bookingId }: Of) =>
  fc.record({
    movedOn: day,
    cutOn: day,
    varietyId,
    bookingId: fc.option(bookingId),
    kind: fc.constantFrom(...MOVE_KINDS),
    stemCount: fc.integer({ min: 1, max: 1_000_000 }),
  });

/** A purchase, on the way or arrived. */
export const anyPurchase = ({ day, varietyId, bookingId }: Of, supplier: fc.Arbitrary<string>) =>
  fc
    .record({
      supplier,
      orderedOn: day,
      daysAway: fc.nat(60),
      varietyId,
      bookingId: fc.option(bookingId),
      bunchCount: fc.integer({ min: 1, max: 10_000 }),
      bunchStems: fc.integer({ min: 1, max: 1_000 }),
      bunchCents: fc.option(fc.nat(100_000)),
      daysToOpen: fc.nat(30),
      stemsForBooking: fc.nat(1_000_000),
      arrived: fc.option(fc.record({ arrivedOn: day, arrivedStems: fc.nat(1_000_000) })),
    })
    .map(({ daysAway, arrived, ...row }) => ({
      ...row,
      arrivesOn: addDays(row.orderedOn, daysAway),
      ...(arrived ?? { arrivedOn: null, arrivedStems: null }),
    }));
