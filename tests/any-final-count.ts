import fc from "fast-check";
import type { Day } from "#lib/domain/day";
import { ROLES } from "#lib/domain/words";

/** A final count of every kind that the types allow, its own day on which it is due, and what was asked for before it was made larger. Names are those that a cell gives back: without spaces around them. */
export const anyFinalCount = (anyDay: fc.Arbitrary<Day>) => ({
  finalDueOn: fc.option(anyDay),
  finalOn: fc.option(anyDay),
  finalPieces: fc.array(
    fc.record({
      count: fc.double({ min: 0.01, max: 10_000, noNaN: true }),
      what: fc.constantFrom("Bouquet", "5 feet / garland", "focal stems, loose", "Arch = 2\\; big", "ｗide"),
    }),
    { maxLength: 4 },
  ),
  finalStems: fc.option(fc.nat(1_000_000)),
  askedBefore: fc.array(fc.record({ until: anyDay, role: fc.constantFrom(...ROLES), stems: fc.nat(1_000_000) }), {
    maxLength: 3,
  }),
});
