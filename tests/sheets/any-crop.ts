import fc from "fast-check";
import type { Crop } from "#lib/domain/records/crop";
import type { Origin } from "#lib/domain/sourced";
import { COLOURS, ROLES, SHAPES } from "#lib/domain/words";
import { anyStore } from "../any-store";
import { anyTraits } from "../any-traits";

/** Crops of every kind that the types allow, with names, texts and origins as they are given. */
export function anyCrop(
  name: fc.Arbitrary<string>,
  text: fc.Arbitrary<string>,
  origin: fc.Arbitrary<Origin>,
): fc.Arbitrary<Omit<Crop, "id">> {
  const sourced = (count: fc.Arbitrary<number>) =>
    fc.tuple(count, origin).map(([counted, from]) => ({ count: counted, ...from }));
  const between = (min: number, max: number) =>
    sourced(fc.double({ min, max, noNaN: true }).map((number) => number + 0));
  const wholeUpTo = (max: number) => sourced(fc.integer({ min: 1, max }));
  return fc.record({
    name,
    scientific: text,
    shape: fc.constantFrom(...SHAPES),
    roles: fc.array(fc.constantFrom(...ROLES), { minLength: 1, maxLength: 3 }),
    usualRole: fc.constantFrom(...ROLES),
    ...anyTraits,
    traitsOrigin: origin,
    tender: fc.boolean(),
    overwinters: fc.boolean(),
    holdDays: between(0, 120),
    ...anyStore(between),
    fieldDays: between(0, 60),
    bunchStems: wholeUpTo(100),
    bucketStems: wholeUpTo(500),
    buyInCents: wholeUpTo(100_000),
    buyInColours: fc.array(fc.constantFrom(...COLOURS), { maxLength: 4 }),
    buyInMonths: fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 4 }),
    tradeOrigin: origin,
    cutStage: text,
    cautions: fc.array(name, { maxLength: 3 }),
  });
}
