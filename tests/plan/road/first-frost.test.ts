import { expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import { weatherOfDays } from "#lib/domain/records/weather-day";
import type { DailyWeather } from "#lib/domain/weather";
import { firstFrostDay, frostOnRecord } from "#lib/plan/road/first-frost";
import { day } from "../../small-farm";

/** Lows from a day on, degrees Celsius; the highs lie ten above. */
const lowsFrom = (first: string, lows: readonly number[]) =>
  weatherOfDays(
    lows.map((lowC, index) => ({ day: toDayNumber(day(first)) + index, highC: lowC + 10, lowC })),
  ) as DailyWeather;
const through = (text: string) => toDayNumber(day(text));

test("the first frost on record is the first low at 0 °C or under since mid-July; one of spring, or of a day to come, is none", () => {
  const autumn = [...new Array(109).fill(4), 0, 5, -3, ...new Array(20).fill(2)];
  const weather = lowsFrom("2026-07-01", autumn);
  const frost = frostOnRecord(weather, 2026, through("2026-11-26"));
  expect(frost === null ? null : toDay(frost)).toBe("2026-10-18");
  expect(frostOnRecord(weather, 2026, through("2026-10-17"))).toBeNull();
  expect(frostOnRecord(lowsFrom("2026-04-01", [-2, -2, 6]), 2026, through("2026-11-26"))).toBeNull();
});

test("a year that lacks December tells no frost of its own, one that is whole tells its first, or its last day where none came", () => {
  const lows = new Array(184).fill(4);
  expect(firstFrostDay(lowsFrom("2026-07-01", lows.slice(0, 140)), 2026)).toBeNull();
  expect(firstFrostDay(lowsFrom("2026-07-01", lows), 2026)).toBe(through("2026-12-31"));
  lows[140] = -1;
  expect(firstFrostDay(lowsFrom("2026-07-01", lows), 2026)).toBe(through("2026-07-01") + 140);
});
