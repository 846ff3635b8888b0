import { expect, test } from "vitest";
import { inventedWeather } from "#demo/invented-weather";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDay } from "#lib/domain/day";
import type { DailyWeather } from "#lib/domain/weather";
import { recordedClimate } from "#lib/plan/learning/recorded-climate";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";

const CLIMATE = CLIMATE_STATIONS[0];

/** Years in which every day is the climate's own. */
function usualWeather(firstYear: number, yearCount: number): DailyWeather {
  const years = Array.from({ length: yearCount }, (_, index) => usualYear(CLIMATE, firstYear + index));
  const joined = (name: "highC" | "lowC") => Float64Array.from(years.flatMap((year) => [...year[name]]));
  return { firstDay: firstDayOf(firstYear), highC: joined("highC"), lowC: joined("lowC") };
}

test("[H9] a record of usual days gives back the climate that made them, month by month, to the tenth", () => {
  const found = recordedClimate(usualWeather(2003, 12));
  expect(found?.yearCount).toBe(12);
  found?.monthlyHighsC.forEach((high, month) => {
    expect(Math.abs(high - CLIMATE.monthlyHighsC[month])).toBeLessThanOrEqual(0.0501);
    expect(Math.abs(found.monthlyLowsC[month] - CLIMATE.monthlyLowsC[month])).toBeLessThanOrEqual(0.0501);
  });
});

test("[H9] each year counts alike, however many of its days are missing: the mean of the years' means, added up by hand", () => {
  const weather = inventedWeather(CLIMATE, 2003, firstDayOf(2015), 9);
  // Nine days of July 2010 are missing, and thirteen of July 2011, which is then no July.
  for (const [from, dayCount] of [
    [firstDayOf(2010) + 181, 9],
    [firstDayOf(2011) + 181, 13],
  ])
    weather.highC.fill(Number.NaN, from - weather.firstDay, from - weather.firstDay + dayCount);
  const means: number[] = [];
  for (let year = 2003; year < 2015; year++) {
    const julys = [...weather.highC].filter((high, index) => {
      const day = toDay(weather.firstDay + index);
      return day.startsWith(`${year}-07`) && !Number.isNaN(high);
    });
    if (julys.length >= 20) means.push(julys.reduce((sum, high) => sum + high, 0) / julys.length);
  }
  expect(means).toHaveLength(11);
  const july = means.reduce((sum, mean) => sum + mean, 0) / means.length;
  const found = recordedClimate(weather);
  expect(found?.monthlyHighsC[6]).toBeCloseTo(july, 1);
  expect(found?.yearCount).toBe(11);
});

test("[H9] nine years of any month are too few", () => {
  expect(recordedClimate(usualWeather(2003, 9))).toBeNull();
});
