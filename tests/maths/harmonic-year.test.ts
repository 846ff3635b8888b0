import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { harmonicYear } from "#lib/maths/harmonic-year";
import { seededRandom } from "#lib/maths/random";

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** The mean of each month, added up day by day. */
function monthlyMeans(days: Float64Array): number[] {
  let from = 0;
  return LENGTHS.map((length, month) => {
    const to = from + length + (month === 1 ? days.length - 365 : 0);
    const mean = days.slice(from, to).reduce((sum, value) => sum + value, 0) / (to - from);
    from = to;
    return mean;
  });
}

describe("a smooth year from twelve means", () => {
  test("twelve alike give every day alike", () => {
    for (const value of harmonicYear(Array(12).fill(7), 365)) expect(value).toBeCloseTo(7, 12);
  });

  test.each([365, 366] as const)(
    "[F8] every month keeps its mean, on stations and on any numbers, in %i days",
    (dayCount) => {
      const random = seededRandom(4);
      const anyMeans = Array.from({ length: 40 }, () => Array.from({ length: 12 }, () => random() * 80 - 40));
      for (const means of [...CLIMATE_STATIONS.map(({ monthlyHighsC }) => monthlyHighsC), ...anyMeans])
        monthlyMeans(harmonicYear(means, dayCount)).forEach((mean, month) => {
          expect(mean).toBeCloseTo(means[month], 9);
        });
    },
  );

  test("no station jumps from one day to the next, New Year neither", () => {
    for (const { monthlyHighsC, monthlyLowsC } of CLIMATE_STATIONS)
      for (const means of [monthlyHighsC, monthlyLowsC]) {
        const days = harmonicYear(means, 365);
        days.forEach((value, index) => {
          expect(Math.abs(value - days[(index + 364) % 365])).toBeLessThan(0.5);
        });
      }
  });

  test("a pure wave comes back as itself: the mean of a month under a sine is its area, and the sine is found again", () => {
    const wave = (day: number) => 12 - 11 * Math.cos((2 * Math.PI * (day + 0.5)) / 365);
    const truth = Float64Array.from({ length: 365 }, (_, day) => wave(day));
    harmonicYear(monthlyMeans(truth), 365).forEach((value, day) => {
      expect(value).toBeCloseTo(truth[day], 9);
    });
  });

  test("eleven months are refused", () => {
    expect(() => harmonicYear(Array(11).fill(1), 365)).toThrow(RangeError);
  });
});
