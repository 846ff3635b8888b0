import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { chanceOfAtLeast, logChanceOf } from "#lib/maths/negative-binomial";

/** jStat 1.9.6 (MIT licence, https://github.com/jstat/jstat), an independent library of statistics; it has no types of its own. */
type Reference = { negbin: Record<"pdf" | "cdf", (failures: number, size: number, chance: number) => number> };
const { jStat }: { jStat: Reference } = createRequire(import.meta.url)("jstat");

describe("the negative binomial distribution", () => {
  it("is that of an independent library, in its form of failures and a chance", () => {
    for (const size of [1, 4, 11])
      for (const mean of [0.5, 3, 25, 140])
        for (const count of [0, 1, 7, 30, 160]) {
          const chance = size / (size + mean);
          expect(Math.exp(logChanceOf(count, size)(mean))).toBeCloseTo(jStat.negbin.pdf(count, size, chance), 9);
          expect(chanceOfAtLeast(count, mean, size)).toBeCloseTo(
            count === 0 ? 1 : 1 - jStat.negbin.cdf(count - 1, size, chance),
            9,
          );
        }
  });

  it("finds nothing for certain where nothing is expected", () => {
    expect(logChanceOf(0, 11)(0)).toBe(0);
    expect(logChanceOf(1, 11)(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(chanceOfAtLeast(1, 0, 11)).toBe(0);
    expect(chanceOfAtLeast(0, 0, 11)).toBe(1);
  });
});
