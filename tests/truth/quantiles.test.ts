import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { betaQuantile, betaShare } from "#lib/maths/beta";
import { binomialQuantile, binomialShare } from "#lib/maths/binomial";
import { gammaQuantile, gammaShare } from "#lib/maths/gamma";
import { normalQuantile, normalShare } from "#lib/maths/normal";

/**
 * The reference is jStat 1.9.6, an independent library of statistics (MIT licence, https://github.com/jstat/jstat). It has no types of
 * its own: these are the parts used here. Its normal inverse is good to about eight digits and its incomplete beta function stops at seven (its
 * continued fraction at 3e-7), which sets the ceilings.
 */
type Reference = {
  normal: {
    inv(share: number, mean: number, spread: number): number;
    cdf(x: number, mean: number, spread: number): number;
  };
  gamma: {
    inv(share: number, shape: number, scale: number): number;
    cdf(x: number, shape: number, scale: number): number;
  };
  beta: { inv(share: number, a: number, b: number): number; cdf(x: number, a: number, b: number): number };
  binomial: { pdf(count: number, trials: number, share: number): number };
};
const { jStat }: { jStat: Reference } = createRequire(import.meta.url)("jstat");

const SHARES = [1e-6, 1e-3, 0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.975, 0.999, 1 - 1e-6];

const relative = (ours: number, theirs: number): number => Math.abs(ours - theirs) / Math.max(Math.abs(theirs), 1e-12);
const worst = (errors: readonly number[]): number => errors.reduce((a, b) => Math.max(a, b), 0);

describe("quantiles against jStat", () => {
  test("normal: at most 1e-8 apart", () => {
    expect(worst(SHARES.map((u) => Math.abs(normalQuantile(u) - jStat.normal.inv(u, 0, 1))))).toBeLessThan(1e-8);
    expect(
      worst([-5, -2, -0.3, 0, 0.7, 1.96, 4].map((z) => Math.abs(normalShare(z) - jStat.normal.cdf(z, 0, 1)))),
    ).toBeLessThan(1e-9);
  });

  test.each([0.25, 0.8, 1, 4, 16, 25, 400])("gamma of shape %s: at most 1e-6 of the value apart", (shape) => {
    expect(worst(SHARES.map((u) => relative(gammaQuantile(u, shape), jStat.gamma.inv(u, shape, 1))))).toBeLessThan(
      1e-6,
    );
    const points = [0.1, 0.5, 1, 1.5, 3].map((times) => times * shape);
    expect(worst(points.map((x) => Math.abs(gammaShare(x, shape) - jStat.gamma.cdf(x, shape, 1))))).toBeLessThan(1e-10);
  });

  test.each([
    [3, 1],
    [0.4, 3.6],
    [9, 1],
    [2, 2],
    [100, 9],
    [600, 200],
  ])("beta of %s and %s: at most 1e-6 of the value apart", (a, b) => {
    expect(worst(SHARES.map((u) => relative(betaQuantile(u, a, b), jStat.beta.inv(u, a, b))))).toBeLessThan(1e-6);
    const points = [0.01, 0.2, 0.5, 0.75, 0.95];
    expect(worst(points.map((x) => Math.abs(betaShare(x, a, b) - jStat.beta.cdf(x, a, b))))).toBeLessThan(1e-7);
  });

  test.each([
    [1, 0.4],
    [10, 0.3],
    [60, 0.75],
    [5, 0.01],
    [400, 0.925],
  ])("binomial of %s trials of %s: the same count, by adding up jStat's chances", (trialCount, share) => {
    for (const u of SHARES) {
      let count = 0;
      let below = jStat.binomial.pdf(0, trialCount, share);
      while (below < u && count < trialCount) below += jStat.binomial.pdf(++count, trialCount, share);
      expect(binomialQuantile(u, trialCount, share)).toBe(count);
      expect(binomialShare(count, trialCount, share)).toBeCloseTo(below, 9);
    }
  });
});

describe("each share and its quantile undo each other", () => {
  test("to one part in a thousand million", () => {
    for (const u of SHARES) {
      expect(relative(normalShare(normalQuantile(u)), u)).toBeLessThan(1e-9);
      for (const shape of [0.25, 1, 16, 400])
        expect(relative(gammaShare(gammaQuantile(u, shape), shape), u)).toBeLessThan(1e-9);
      for (const [a, b] of [
        [3, 1],
        [0.4, 3.6],
        [100, 9],
      ])
        expect(relative(betaShare(betaQuantile(u, a, b), a, b), u)).toBeLessThan(1e-9);
    }
  });
});
