import { expect, test } from "vitest";
import {
  asMeant,
  difference,
  floored,
  fraction,
  inCommonParts,
  product,
  quotient,
  sum,
  whole,
} from "#lib/maths/fraction";
import { seededRandom, wholeBetween } from "#lib/maths/random";

test("a number typed is the decimal that was typed, whatever floating point made of it", () => {
  expect(asMeant(12.35)).toEqual(fraction(1235n, 100n));
  expect(asMeant(600 * 0.3048 ** 2)).toEqual(fraction(55_741_824n, 1_000_000n));
  expect(asMeant(50 * 0.3048)).toEqual(fraction(1524n, 100n));
  expect(asMeant(10.1 * 0.9144 ** 3)).toEqual(fraction(77_220_040_656_384n, 10n ** 13n));
  expect(asMeant(-0.5)).toEqual(fraction(-1n, 2n));
  expect(asMeant(0)).toEqual(whole(0));
});

test("a number that no short decimal makes is the simplest fraction that does", () => {
  expect(asMeant(1 / 3)).toEqual(fraction(1n, 3n));
  expect(asMeant(0.5 / 9.290304)).toEqual(fraction(15_625n, 290_322n));
  expect(asMeant(22 / 7)).toEqual(fraction(22n, 7n));
  expect(() => asMeant(Number.NaN)).toThrow(new RangeError("number must be finite, got NaN"));
});

test("every fraction of whole numbers up to 1,000 is found again, as is every decimal of up to five places: 4,000 of each", () => {
  const random = seededRandom(5);
  for (let time = 0; time < 4000; time++) {
    const [top, bottom] = [wholeBetween(random, 1, 1000), wholeBetween(random, 1, 1000)];
    expect(asMeant(top / bottom)).toEqual(fraction(BigInt(top), BigInt(bottom)));
    const digits = wholeBetween(random, 1, 99_999_999);
    expect(asMeant(digits / 100_000)).toEqual(fraction(BigInt(digits), 100_000n));
  }
});

test("a third and a sixth are a half; a half less a third a sixth; a third of three quarters a quarter; a half by a quarter two", () => {
  const [half, third, sixth, quarter] = [2n, 3n, 6n, 4n].map((bottom) => fraction(1n, bottom));
  expect(sum(third, sixth)).toEqual(half);
  expect(difference(half, third)).toEqual(sixth);
  expect(product(third, fraction(3n, 4n))).toEqual(quarter);
  expect(quotient(half, quarter)).toEqual(whole(2));
  expect(() => quotient(half, whole(0))).toThrow(RangeError);
});

test("rounded down: 7/2 to 3, -7/2 to -4, 4 to 4; in common parts 1/2, 1/3 and 5/4 are 6, 4 and 15 twelfths", () => {
  expect([fraction(7n, 2n), fraction(7n, -2n), whole(4)].map(floored)).toEqual([3n, -4n, 4n]);
  expect(inCommonParts([fraction(1n, 2n), fraction(1n, 3n), fraction(5n, 4n)])).toEqual([6n, 4n, 15n]);
});
