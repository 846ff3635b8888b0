import { describe, expect, it } from "vitest";
import { cutEvidence } from "#lib/plan/learning/season/cut-evidence";

const STEMS = [0, 2, 10, 40, 120];
const mostLikely = (logOf: (expected: number) => number) =>
  Array.from({ length: 400 }, (_, index) => index / 2).reduce(
    (best, expected) => (logOf(expected) > logOf(best) ? expected : best),
    0,
  );

describe("what a cut says", () => {
  it("[O2] all that was ready is likeliest where just so many were expected", () => {
    for (const stems of STEMS)
      expect(Math.abs(mostLikely(cutEvidence({ stems, says: "all that was ready" })) - stems)).toBeLessThanOrEqual(0.5);
  });

  it("[O2] a filled list is likelier the more were expected, and never speaks against many", () => {
    for (const stems of STEMS) {
      const logOf = cutEvidence({ stems, says: "at least" });
      for (let expected = 0; expected < 300; expected += 3)
        expect(logOf(expected + 3)).toBeGreaterThanOrEqual(logOf(expected));
      expect(logOf(stems * 3 + 40)).toBeGreaterThan(Math.log(0.95));
    }
  });

  it("[O2] no record says anything for certain: two in a thousand are not trusted", () => {
    expect(cutEvidence({ stems: 50, says: "at least" })(0)).toBeCloseTo(Math.log(0.002), 9);
    expect(cutEvidence({ stems: 50, says: "all that was ready" })(0)).toBeGreaterThan(Math.log(1e-6));
  });
});
