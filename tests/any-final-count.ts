import fc from "fast-check";
import type { Day } from "#lib/domain/day";

/** A final count of every kind that the types allow, and its own day on which it is due. Names are those that a cell gives back: without spaces around them. */
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
});
