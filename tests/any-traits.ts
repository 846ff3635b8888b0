import fc from "fast-check";
import { COLOURS, HEAD_SIZES, OUT_OF_WATER, ROLES, STEM_ASKS, STEM_LENGTHS } from "#lib/domain/words";

/** What stems are like, told or not. */
export const anyTraits = {
  headSize: fc.option(fc.constantFrom(...HEAD_SIZES)),
  stemLength: fc.option(fc.constantFrom(...STEM_LENGTHS)),
  outOfWater: fc.option(fc.constantFrom(...OUT_OF_WATER)),
};

/** What a line asks of its stems, in any order. */
export const anyAsks = fc.uniqueArray(fc.constantFrom(...STEM_ASKS), { maxLength: 3 });

/** What a variety says of itself, or not. @param days  of a hold, from and to */
export const anyOwnTraits = (days: (least: number, most: number) => fc.Arbitrary<number>) => ({
  roles: fc.uniqueArray(fc.constantFrom(...ROLES), { maxLength: 3 }),
  ...anyTraits,
  holdDays: fc.option(days(0, 120)),
  stretchDays: fc.option(days(0, 120)),
});

/** A variety as a sheet names it, with what it says of itself. */
export const anyVariety = (name: fc.Arbitrary<string>) =>
  fc.record({
    variety: name,
    colour: fc.constantFrom(...COLOURS),
    ...anyOwnTraits((min, max) => fc.integer({ min, max })),
  });
