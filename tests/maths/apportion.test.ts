import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apportion, evenPart } from "#lib/maths/apportion";

const SEED = 20270607;
const totals = fc.nat(100_000);
const weights = fc
  .array(
    fc.oneof(
      fc.constant(0),
      fc.integer({ min: 1000, max: 1_000_000_000 }).map((millionths) => millionths / 1_000_000),
    ),
    { minLength: 1, maxLength: 30 },
  )
  .filter((list) => list.some((weight) => weight > 0));
const sum = (parts: Iterable<number>) => [...parts].reduce((total, part) => total + part, 0);

/** The slow second method: shares as fractions of whole numbers of any size. */
function byFractions(total: number, whole: readonly number[]): Int32Array {
  const weightSum = BigInt(sum(whole));
  const scaled = whole.map((weight) => BigInt(total) * BigInt(weight));
  const parts = scaled.map((share) => share / weightSum);
  const order = [...parts.keys()].sort((a, b) => Number((scaled[b] % weightSum) - (scaled[a] % weightSum)) || a - b);
  const left = total - sum(parts.map(Number));
  for (const index of order.slice(0, left)) parts[index]++;
  return Int32Array.from(parts, Number);
}

describe("apportion", () => {
  test("10 over three equal weights is 4, 3, 3: the odd one goes to the first", () => {
    expect([...apportion(10, [1, 1, 1])]).toEqual([4, 3, 3]);
  });

  test("7 over 5, 3, 2 is fairly 3.5, 2.1, 1.4: down to 3, 2, 1, and the one left to the largest remainder", () => {
    expect([...apportion(7, [5, 3, 2])]).toEqual([4, 2, 1]);
  });

  test("10 over 0.1, 0.3, 0.1, 0.3 is fairly 1.25, 3.75, 1.25, 3.75; 9 over it ties at 1.125, 3.375 twice: the earlier of two like weights gets the odd one", () => {
    expect([...apportion(10, [0.1, 0.3, 0.1, 0.3])]).toEqual([1, 4, 1, 4]);
    expect([...apportion(9, [0.1, 0.3, 0.1, 0.3])]).toEqual([1, 4, 1, 3]);
  });

  test("remainders that tie in decimals tie, though they do not in binary: 5 over 0.7, 0.1, 0.2 is fairly 3.5, 0.5, 1, so 4, 0, 1", () => {
    expect([...apportion(5, [0.7, 0.1, 0.2])]).toEqual([4, 0, 1]);
  });

  test("tenths are divided as the whole numbers that they stand for: all totals up to 200 over 400 lists of weights", () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(60), { minLength: 1, maxLength: 12 }).filter((list) => list.some((weight) => weight > 0)),
        fc.nat(200),
        (list, total) => {
          expect(
            apportion(
              total,
              list.map((weight) => weight / 10),
            ),
          ).toEqual(apportion(total, list));
          expect(
            apportion(
              total,
              list.map((weight) => weight / 1000),
            ),
          ).toEqual(byFractions(total, list));
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });

  test("totals and weights whose products pass 2 ** 53 are divided exactly too", () => {
    const list = [123_456.789012, 987_654.321, 0.000001];
    expect(apportion(2_000_000_011, list)).toEqual(
      byFractions(
        2_000_000_011,
        list.map((weight) => Math.round(weight * 1e6)),
      ),
    );
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
