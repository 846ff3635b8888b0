import { describe, expect, test } from "vitest";
import { philox, sharesAt } from "#lib/maths/philox";
import { RunningMean } from "#lib/maths/running-mean";

const hex = (words: Record<string, number>): string =>
  Object.values(words)
    .map((word) => word.toString(16).padStart(8, "0"))
    .join(" ");

describe("a table of chance", () => {
  /** The known answers that come with the authors' own code (Random123, kat_vectors; from memory). */
  test("gives the known answers of Philox4x32-10", () => {
    expect(hex(philox([0, 0], [0, 0, 0, 0]))).toBe("6627e8d5 e169c58d bc57ac4c 9b00dbd8");
    const ones = 0xffffffff;
    expect(hex(philox([ones, ones], [ones, ones, ones, ones]))).toBe("408f276d 41c83b0e a20bc7c6 6d5451fd");
    const digitsOfPi = philox([0xa4093822, 0x299f31d0], [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344]);
    expect(hex(digitsOfPi)).toBe("d16cfe09 94fdcceb 5001e420 24126ea1");
  });

  test("seed 11: 40,000 shares have the mean and variance of an even spread, within four standard errors", () => {
    const mean = new RunningMean();
    for (let row = 0; row < 10_000; row++)
      for (const share of Object.values(sharesAt([11, 0], [row, 0, 0, 0]))) mean.add(share);
    expect(Math.abs(mean.mean - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / 40_000));
    expect(Math.abs(mean.variance() - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / 40_000));
  });

  test("shares are never 0 and never 1", () => {
    for (let row = 0; row < 1000; row++)
      for (const share of Object.values(sharesAt([12, 0], [row, 1, 2, 3]))) expect(share > 0 && share < 1).toBe(true);
  });
});
