import { expect, test } from "vitest";
import { clockInWords } from "#lib/plan/words/clock-words";
import { curve, monthDay } from "../../small-farm";

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
  expect(clockInWords(curve(), "us")).toBeNull();
});
