import fc from "fast-check";
import { addDays } from "#lib/domain/day";
import { MOVE_KINDS } from "#lib/domain/records/cooler-move";
import { day, name } from "./arbitraries";

/** A move out of the cooler whose ids are places in a list, to be looked up with `among`. */
export const moveDraft = fc.record({
  movedOn: day,
  cutOn: day,
  varietyId: fc.nat(),
  bookingId: fc.option(fc.nat()),
  kind: fc.constantFrom(...MOVE_KINDS),
  stemCount: fc.integer({ min: 1, max: 1_000_000 }),
});

/** A purchase whose ids are places in a list, to be looked up with `among`. */
export const purchaseDraft = fc
  .record({
    supplier: name,
    orderedOn: day,
    daysAway: fc.nat(60),
    varietyId: fc.nat(),
    bookingId: fc.option(fc.nat()),
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
