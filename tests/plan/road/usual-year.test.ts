import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import type { Climate } from "#lib/domain/records/climate";
import { usualYear } from "#lib/plan/road/usual-year";
import { climateInWords } from "#lib/plan/words/climate-words";

const even: Climate = {
  station: "Even",
  latitudeDegrees: 40,
  monthlyHighsC: Array(12).fill(20),
  monthlyLowsC: Array(12).fill(4),
};

describe("the usual year of a climate", () => {
  test("[F8] twelve months of 20 by day and 4 by night are 12 on every day, and 2028 has one day more", () => {
    expect(usualYear(even, 2027).meanC).toHaveLength(365);
    expect(usualYear(even, 2028).meanC).toHaveLength(366);
    for (const mean of usualYear(even, 2028).meanC) expect(mean).toBeCloseTo(12, 10);
  });

  test("[F8] in every built-in place a day’s low lies under its high, and summer is summer", () => {
    for (const climate of CLIMATE_STATIONS) {
      const { highC, lowC, meanC } = usualYear(climate, 2027);
      expect(highC.every((high, index) => lowC[index] < high)).toBe(true);
      const warmest = meanC.indexOf(Math.max(...meanC));
      // From 10 July to 8 August: July is the warmest month of all ten stations, in Louisville with August close by (CCD-NORM).
      expect(warmest).toBeGreaterThan(190);
      expect(warmest).toBeLessThan(220);
    }
  });

  test("it is said in the farm's unit, with the days on which growth begins and ends", () => {
    const [albany] = CLIMATE_STATIONS;
    expect(climateInWords(albany, "us")).toMatch(
      /^On average it is warmest about 2\d Jul, 72 °F by day and night together; a day’s mean passes 50 °F on 2\d Apr and falls below it after 1\d Oct\.$/,
    );
    expect(climateInWords(even, "metric")).toMatch(/12 °C by day and night together\.$/);
  });
});
