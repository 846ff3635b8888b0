import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apportion, evenPart } from "#lib/maths/apportion";

const SEED = 20270607;
const totals = fc.nat(100_000);
const weights = fc
  .array(fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 1000, noNaN: true })), { minLength: 1, maxLength: 30 })
  .filter((list) => list.some((weight) => weight > 0));
const sum = (parts: Iterable<number>) => [...parts].reduce((total, part) => total + part, 0);

describe("apportion", () => {
  test("10 over three equal weights is 4, 3, 3: the odd one goes to the first", () => {
    expect([...apportion(10, [1, 1, 1])]).toEqual([4, 3, 3]);
  });

  test("7 over 5, 3, 2 is fairly 3.5, 2.1, 1.4: down to 3, 2, 1, and the one left to the largest remainder", () => {
    expect([...apportion(7, [5, 3, 2])]).toEqual([4, 2, 1]);
  });

  test("nothing over no weight is nothing", () => {
    expect([...apportion(0, [0, 0])]).toEqual([0, 0]);
  });

  test("parts are whole, sum to the total, and lie within one of their fair share", () => {
    fc.assert(
      fc.property(totals, weights, (total, list) => {
        const parts = apportion(total, list);
        const weightSum = sum(list);
        expect(sum(parts)).toBe(total);
        list.forEach((weight, index) => {
          expect(Math.abs(parts[index] - (total * weight) / weightSum)).toBeLessThan(1 + 1e-9);
          if (weight === 0) expect(parts[index]).toBe(0);
        });
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("a heavier weight never gets less than a lighter one", () => {
    fc.assert(
      fc.property(totals, weights, (total, list) => {
        const parts = apportion(total, list);
        for (let a = 0; a < list.length; a++)
          for (let b = 0; b < list.length; b++)
            if (list[a] > list[b]) expect(parts[a]).toBeGreaterThanOrEqual(parts[b]);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("a total that is not whole, a negative weight and a total without weights are refused", () => {
    expect(() => apportion(1.5, [1])).toThrow(RangeError);
    expect(() => apportion(-1, [1])).toThrow(RangeError);
    expect(() => apportion(3, [1, -1])).toThrow("weights[1] must be 0 or more, got -1");
    expect(() => apportion(3, [1, Number.NaN])).toThrow(RangeError);
    expect(() => apportion(3, [0, 0])).toThrow(RangeError);
  });
});

describe("evenPart", () => {
  test("10 over a week is 1, 1, 2, 1, 2, 1, 2", () => {
    expect([0, 1, 2, 3, 4, 5, 6].map((index) => evenPart(10, index, 7))).toEqual([1, 1, 2, 1, 2, 1, 2]);
  });

  test("parts are whole, sum to the total and are never two apart", () => {
    fc.assert(
      fc.property(totals, fc.integer({ min: 1, max: 60 }), (total, stepCount) => {
        const parts = Array.from({ length: stepCount }, (_, index) => evenPart(total, index, stepCount));
        expect(sum(parts)).toBe(total);
        expect(Math.max(...parts) - Math.min(...parts)).toBeLessThanOrEqual(1);
        expect(parts.every(Number.isInteger)).toBe(true);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
