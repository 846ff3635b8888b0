import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { SOURCES } from "#lib/domain/catalogue/sources";
import { measureIn, shown, toStored } from "#lib/domain/measures";
import { problemsOf } from "#lib/domain/problem";
import { climateSchema } from "#lib/domain/records/climate";
import { toFahrenheit } from "#lib/domain/weather";

const richmond = CLIMATE_STATIONS.find(({ station }) => station.startsWith("Richmond"));

describe("a climate", () => {
  test("every built-in one is sound, and its source is known", () => {
    for (const climate of CLIMATE_STATIONS) expect(climateSchema.parse(climate)).toEqual(climate);
    expect(SOURCES).toHaveProperty("CCD-NORM");
  });

  test("July in Richmond is 89.7 °F by day and 68.9 by night, as published (CCD-NORM, normals of 1981 to 2010)", () => {
    expect(toFahrenheit(richmond?.monthlyHighsC[6] ?? 0)).toBeCloseTo(89.7, 10);
    expect(toFahrenheit(richmond?.monthlyLowsC[6] ?? 0)).toBeCloseTo(68.9, 10);
  });

  // Asheville and Richmond: annual means as the table prints them (CCD-NORM).
  test.each([
    ["Asheville", 65.8, 41.6],
    ["Richmond", 69.6, 48.1],
    ["Burlington", 55.2, 36.6],
    ["Raleigh", 71.6, 50.0],
  ])("the twelve months of %s average to the printed year, to its rounding", (place, high, low) => {
    const climate = CLIMATE_STATIONS.find(({ station }) => station.startsWith(place));
    const mean = (months: readonly number[] = []) => toFahrenheit(months.reduce((sum, value) => sum + value, 0) / 12);
    expect(Math.abs(mean(climate?.monthlyHighsC) - high)).toBeLessThan(0.11);
    expect(Math.abs(mean(climate?.monthlyLowsC) - low)).toBeLessThan(0.11);
  });

  test("a low above the high, and eleven months, are refused with their place", () => {
    const wrong = {
      station: "Hill",
      latitudeDegrees: 40,
      monthlyHighsC: Array(12).fill(5),
      monthlyLowsC: Array(12).fill(4),
    };
    const places = (given: object) => {
      const { error } = climateSchema.safeParse({ ...wrong, ...given });
      return error ? problemsOf(error).map(({ place }) => place) : [];
    };
    expect(places({ monthlyLowsC: [4, 4, 6, ...Array(9).fill(4)] })).toEqual(["monthlyLowsC[2]"]);
    expect(places({ monthlyHighsC: Array(11).fill(5), station: " " })).toEqual(["station", "monthlyHighsC"]);
  });

  test("degrees are shown and typed in the farm's unit: 2.5 °C is 36.5 °F", () => {
    const us = measureIn("us", "temperature");
    expect(shown(us, 2.5)).toBe("36.5");
    expect(toStored(us, 36.5)).toBe(2.5);
    expect(shown(measureIn("metric", "temperature"), 2.5)).toBe("2.5");
  });
});
