import { describe, expect, test } from "vitest";
import { heatSums, momentOfHeat } from "#lib/plan/road/heat-sums";
import { heatOf } from "#lib/plan/road/usual-heat";

/**
 * Days from transplanting to flower of snapdragon 'Chimes White' at constant temperatures, greenhouse, two years. Published: Pakistan Journal of
 * Botany 47(5), 2015 (SNAP-2015, http://www.pakbs.org/pjbot/abstracts/47(5)/15.html), which finds the rate straight and flat above 28 °C.
 */
const UP_TO_28 = [
  { meanC: 14.6, days: 68 },
  { meanC: 19.5, days: 43 },
  { meanC: 23.1, days: 37 },
  { meanC: 25.3, days: 35 },
  { meanC: 15.1, days: 67 },
  { meanC: 22.5, days: 39 },
  { meanC: 24.0, days: 34 },
  { meanC: 27.5, days: 29 },
];
const ABOVE_28 = [
  { meanC: 31.8, days: 34 },
  { meanC: 31.5, days: 30 },
];
const CEILING_C = 28;

type Point = (typeof UP_TO_28)[number];

/** Base and sum from the straight line of the rate, 1 / days, on temperature, by least squares. */
function fitted(points: readonly Point[]): { baseC: number; sum: number } {
  const mean = (of: (point: Point) => number) => points.reduce((all, point) => all + of(point), 0) / points.length;
  const [meanC, meanRate] = [mean((point) => point.meanC), mean((point) => 1 / point.days)];
  const slope =
    mean((point) => (point.meanC - meanC) * (1 / point.days - meanRate)) / mean((point) => (point.meanC - meanC) ** 2);
  return { baseC: meanC - meanRate / slope, sum: 1 / slope };
}

/** Days until the forecast's own clock has the sum, every day at one temperature. */
const daysAt = (meanC: number, { baseC, sum }: { baseC: number; sum: number }): number | null =>
  momentOfHeat(
    heatSums(0, new Float64Array(200).fill(heatOf(meanC, { baseC, ceilingC: CEILING_C, limitC: null }))),
    0,
    sum,
  );

describe("snapdragons at constant temperatures (SNAP-2015)", () => {
  test("each of the eight points is told from the other seven within 4 days, 2.2 by the root mean square", () => {
    const errors = UP_TO_28.map((point) => {
      const told = daysAt(point.meanC, fitted(UP_TO_28.filter((other) => other !== point)));
      return (told ?? Number.NaN) - point.days;
    });
    for (const error of errors) expect(Math.abs(error)).toBeLessThanOrEqual(4);
    expect(Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length)).toBeLessThan(2.2);
  });

  test("all eight give the base of 4.6 °C that the built-in curve has", () => {
    expect(fitted(UP_TO_28).baseC).toBeCloseTo(4.6, 1);
  });

  test("above 28 °C it is no faster: two points from beyond are told within 5 days", () => {
    for (const { meanC, days } of ABOVE_28)
      expect(Math.abs((daysAt(meanC, fitted(UP_TO_28)) ?? Number.NaN) - days)).toBeLessThanOrEqual(5);
  });
});
