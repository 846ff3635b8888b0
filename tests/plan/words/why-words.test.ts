import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDayNumber } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import { warmthOf } from "#lib/plan/road/first-cut";
import { grown } from "#lib/plan/road/grown";
import { heatReached } from "#lib/plan/road/heat-reached";
import { lateInWords, whyInWords } from "#lib/plan/words/why-words";
import { curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";

const [ALBANY] = CLIMATE_STATIONS;

/** Cut 60 days after planting on 20 May in Albany; grows above 10 °C. */
const annual = curve({
  anchor: { kind: "days-after-planting", days: 60 },
  heatBaseC: 10,
  heatFrom: monthDay("05-20"),
  heatPlace: ALBANY.station,
});

function why(today: string, units: "us" | "metric", of: BloomCurve = annual, climate = true, plantedOn = "2027-05-20") {
  const given = snapshot({
    farm: farm({ climate: climate ? ALBANY : null }),
    curves: [of],
    plantings: [planting({ id: 1, plantedOn: day(plantedOn) })],
  });
  const [row] = grown(given, 2027);
  const reached = heatReached(row, warmthOf(given.farm), toDayNumber(day(today)));
  return { words: whyInWords(row, reached, units), reached };
}

test("a planting that is late says what is left of its stems, one in time says nothing", () => {
  expect(lateInWords(0.76)).toBe("Planted late, it gives 76 % of the stems of a planting on its known day.");
  expect(lateInWords(1)).toBeNull();
});

describe("why it blooms when it does", () => {
  test("half way it says how many degree days it has had, in the farm's own degrees", () => {
    const { words, reached } = why("2027-06-19", "metric");
    expect(words).toMatch(
      /^It needs 578 degree days above 10 °C, counted from 20 May, which it should have on 19 Jul: 231 of 578 by 19 Jun\.$/,
    );
    expect(why("2027-06-19", "us").words).toMatch(
      /^It needs 1,04\d degree days above 50 °F, counted from 20 May, .*: 41\d of 1,04\d by 19 Jun\.$/,
    );
    expect(reached && reached.reached / reached.needed).toBeGreaterThan(0.35);
    expect(reached && reached.reached / reached.needed).toBeLessThan(0.5);
  });

  test("before it is planted it has none, and from the first cut on all of them", () => {
    expect(why("2027-01-10", "metric").words).toMatch(/: none of 578 yet\.$/);
    const { words, reached } = why("2027-09-01", "metric");
    expect(words).toMatch(
      /^It has had the 578 degree days above 10 °C that it needs, counted from 20 May, by 19 Jul\.$/,
    );
    expect(reached?.reached).toBeCloseTo(reached?.needed ?? 0, 6);
  });

  test("a curve that moves its first cut says so, and the warmth is there on the day that it is", () => {
    expect(why("2027-06-19", "metric", { ...annual, laterDays: -3 }).words).toMatch(
      /which it should have on 19 Jul: .*\. The curve moves its first cut 3 days earlier\.$/,
    );
    expect(why("2027-09-01", "metric", { ...annual, laterDays: 1 }).words).toMatch(
      /by 19 Jul\. The curve moves its first cut 1 day later\.$/,
    );
  });

  test("where the warmth does not suffice it says so", () => {
    expect(why("2027-09-15", "metric", annual, true, "2027-09-01").words).toContain(
      "which it will not have this season",
    );
  });

  test("by the calendar it says the days, and that a climate would change it only where the curve has a clock", () => {
    expect(why("2027-06-19", "us", annual, false).words).toBe(
      "Its first cut goes by the calendar: 60 days after planting. Once the farm has a climate, warmth tells it.",
    );
    expect(why("2027-06-19", "us", curve()).words).toBe("Its first cut goes by the calendar: on 7 Jun every year.");
  });
});
