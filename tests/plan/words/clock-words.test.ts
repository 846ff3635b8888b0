import { expect, test } from "vitest";
import { clockInWords, firstCutInWords, unusableInWords } from "#lib/plan/words/clock-words";
import { curve, day, monthDay } from "../../small-farm";

test("a clock says what it counts, from when, and where its known point lies; the calendar says nothing", () => {
  const heat = { heatBaseC: 10, heatCeilingC: 28, heatFrom: monthDay("05-25"), heatPlace: "Richmond, Virginia" };
  expect(clockInWords(curve({ anchor: { kind: "days-after-planting", days: 60 }, ...heat }), "us")).toBe(
    "Where the farm has a climate, it follows warmth above 50 °F, no faster above 82.4 °F, counted from the planting day; the days are known for planting on 25 May in Richmond, Virginia.",
  );
  expect(
    clockInWords(curve({ ...heat, heatCeilingC: null, heatFrom: monthDay("01-01"), heatPlace: null }), "metric"),
  ).toBe(
    "Where the farm has a climate, it follows warmth above 10 °C, counted from 1 Jan; the day is known in your own climate.",
  );
  expect(clockInWords(curve({ ...heat, heatLimitC: 30 }), "metric")).toContain(
    "above 10 °C, no faster above 28 °C and not at all at 30 °C, counted",
  );
  expect(clockInWords(curve(), "us")).toBeNull();
});

test("a first cut is told by its day or its days, and by how far the curve moves it", () => {
  expect(firstCutInWords(curve({ anchor: { kind: "day-of-year", firstCut: monthDay("06-05") } }))).toBe("on 5 Jun");
  expect(firstCutInWords(curve({ anchor: { kind: "days-after-planting", days: 91 }, laterDays: -1 }))).toBe(
    "91 days after planting, moved 1 day earlier",
  );
});

test("a first cut that says nothing of warmth is told with the reason", () => {
  expect(unusableInWords({ year: 2014, kind: "no-weather", missingDayCount: 40 })).toBe(
    "40 days before the first cut have no weather",
  );
  expect(unusableInWords({ year: 2015, kind: "outside-season", firstCut: day("2016-02-01") })).toBe(
    "2016-02-01 lies outside the season of 2015",
  );
});
