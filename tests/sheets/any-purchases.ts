import fc from "fast-check";
import { addDays } from "#lib/domain/day";
import { anyDay } from "./any-cuts";

/** Purchases of these varieties, the booking by its place among the farm's. */
export const anyPurchases = (varietyId: fc.Arbitrary<number>, supplier: fc.Arbitrary<string>) =>
  fc.array(
    fc
      .record({
        varietyId,
        supplier,
        bookingId: fc.option(fc.nat(2)),
        orderedOn: anyDay,
        daysAway: fc.nat(60),
        bunchCount: fc.integer({ min: 1, max: 10_000 }),
        bunchStems: fc.integer({ min: 1, max: 1_000 }),
        bunchCents: fc.option(fc.nat(100_000)),
        daysToOpen: fc.nat(30),
        stemsForBooking: fc.nat(1_000_000),
        arrived: fc.option(fc.record({ arrivedOn: anyDay, arrivedStems: fc.nat(1_000_000) })),
      })
      .map(({ daysAway, arrived, ...row }) => ({
        ...row,
        arrivesOn: addDays(row.orderedOn, daysAway),
        ...(arrived ?? { arrivedOn: null, arrivedStems: null }),
      })),
    { maxLength: 3 },
  );
