import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gammaQuantile } from "#lib/maths/gamma";
import { logGamma } from "#lib/maths/log-gamma";
import { normalQuantile, normalShare } from "#lib/maths/normal";
import { observedChance } from "#lib/maths/observed-chance";
import { quantile } from "#lib/maths/quantile";
import { RunningMean } from "#lib/maths/running-mean";
import { scoreTable } from "#lib/maths/score-table";
import { twoPieceNormal } from "#lib/maths/two-piece-normal";

describe("quantile", () => {
  test("of 1 to 5: the middle is 3, a tenth up is 1.4", () => {
    expect(quantile([1, 2, 3, 4, 5], 0.5)).toBe(3);
    expect(quantile([1, 2, 3, 4, 5], 0.1)).toBeCloseTo(1.4, 12);
    expect([quantile([7], 0.1), quantile([1, 9], 0), quantile([1, 9], 1)]).toEqual([7, 1, 9]);
  });

  test("refuses no numbers and shares outside 0 to 1", () => {
    expect(() => quantile([], 0.5)).toThrow(RangeError);
    expect(() => quantile([1], 1.5)).toThrow(RangeError);
  });

  test("seed 31: rises with the share and stays among the numbers", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer(), { minLength: 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (numbers, share) => {
          const sorted = Float64Array.from(numbers).sort();
          expect(quantile(sorted, share)).toBeGreaterThanOrEqual(sorted[0]);
          expect(quantile(sorted, share)).toBeLessThanOrEqual(sorted[sorted.length - 1]);
          expect(quantile(sorted, share * 0.9)).toBeLessThanOrEqual(quantile(sorted, share) + 1e-6);
        },
      ),
      { seed: 31 },
    );
  });
});

describe("running mean", () => {
  test("of 2, 4, 4, 4, 5, 5, 7, 9: mean 5, variance 32/7, standard error its root over the root of 8", () => {
    const mean = new RunningMean();
    for (const number of [2, 4, 4, 4, 5, 5, 7, 9]) mean.add(number);
    expect(mean.mean).toBeCloseTo(5, 12);
    expect(mean.variance()).toBeCloseTo(32 / 7, 12);
    expect(mean.standardError()).toBeCloseTo(Math.sqrt(32 / 7 / 8), 12);
  });

  test("of nothing, and of one, there is no error to tell", () => {
    const mean = new RunningMean();
    expect([mean.mean, mean.variance(), mean.standardError()]).toEqual([0, 0, 0]);
    mean.add(3);
    expect([mean.mean, mean.standardError()]).toEqual([3, 0]);
  });
});

describe("observed chance", () => {
  test("80 of 100 is 0.8, give or take 0.04", () => {
    const { share, standardError } = observedChance(80, 100);
    expect(share).toBe(0.8);
    expect(standardError).toBeCloseTo(0.0402, 3);
  });

  test("never in a hundred is 0, but not for certain", () => {
    expect(observedChance(0, 100).share).toBe(0);
    expect(observedChance(0, 100).standardError).toBeGreaterThan(0.005);
  });

  test("refuses more than all, fewer than none, and no trials", () => {
    for (const [happened, trials] of [
      [3, 2],
      [-1, 2],
      [0, 0],
    ])
      expect(() => observedChance(happened, trials)).toThrow(RangeError);
  });
});

describe("the log of the gamma function", () => {
  test("is the log of the factorials, and of the root of pi at a half", () => {
    let factorial = 1;
    for (let whole = 1; whole <= 20; whole++) {
      factorial *= whole;
      expect(logGamma(whole + 1)).toBeCloseTo(Math.log(factorial), 11);
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
  });
});

describe("scores", () => {
  test("the normal's well-known ones: 1.2816 below 90 %, 1.96 below 97.5 %", () => {
    expect(normalQuantile(0.9)).toBeCloseTo(1.2815515655446, 12);
    expect(normalQuantile(0.975)).toBeCloseTo(1.9599639845401, 12);
    expect(normalShare(0)).toBe(0.5);
  });

  test("a table of scores is its distribution's quantile, to one part in 20,000", () => {
    const yieldAt = scoreTable((share) => gammaQuantile(share, 16) / 16);
    for (const score of [-3.01, -1.117, -0.4, 0.013, 0.9, 2.203]) {
      const exact = gammaQuantile(normalShare(score), 16) / 16;
      expect(Math.abs(yieldAt(score) / exact - 1)).toBeLessThan(5e-5);
    }
    expect(yieldAt(50)).toBe(yieldAt(6));
  });

  test("two pieces of a normal meet the three values they were made from, exactly", () => {
    const dates = { p10: 275, p50: 289, p90: 310 };
    expect(
      [0.1, 0.5, 0.9].map((share) => Math.round(1e9 * twoPieceNormal(dates, normalQuantile(share))) / 1e9),
    ).toEqual([275, 289, 310]);
  });
});
