import fc from "fast-check";
import { ROLES } from "#lib/domain/words";

/** A review whose booking is a place in a list. */
export const anyReview = fc
  .record({
    bookingId: fc.nat(),
    role: fc.constantFrom(...ROLES),
    plannedStems: fc.nat(500_000),
    cutStems: fc.nat(500_000),
    boughtStems: fc.nat(500_000),
    thrownAway: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ thrownAway, ...counted }) => ({
    ...counted,
    thrownAwayStems: Math.floor(thrownAway * (counted.cutStems + counted.boughtStems)),
  }));
