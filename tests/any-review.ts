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

/** What a curve has learned of recorded seasons. */
export const anyLearned = fc.array(
  fc.record({
    fromSeason: fc.integer({ min: 1990, max: 2200 }),
    laterDays: fc.integer({ min: -60, max: 60 }),
    yieldFactor: fc.integer({ min: 5, max: 500 }).map((hundredths) => hundredths / 100),
  }),
  { maxLength: 2 },
);
