import { describe, expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { forecast } from "#lib/plan/road/forecast";
import { weeklyStems } from "#lib/plan/road/weekly-stems";
import { crop, curve, day, snapshot } from "../../small-farm";

const frostDay = toDayNumber(day("2027-06-16"));
const weeksOf = (given: Parameters<typeof curve>[0], isTender = false) => {
  const farm = snapshot({ crops: [crop({ id: 1, tender: isTender })], curves: [curve(given)] });
  return weeklyStems(forecast(farm, 2027, frostDay).plantings[0], frostDay);
};

describe("a planting's bloom week by week", () => {
  test("70 plants of 1, 2 and 1 stems open 70, 140 and 70, from the first cut on", () => {
    const weeks = weeksOf({ stemsPerPlantByWeek: [1, 2, 1] });
    expect(weeks.map(({ from, likely }) => [from, likely])).toEqual([
      ["2027-06-07", 70],
      ["2027-06-14", 140],
      ["2027-06-21", 70],
    ]);
  });

  test("a tender crop is drawn up to the frost: two days of the second week's 140 stems, then none", () => {
    expect(weeksOf({ stemsPerPlantByWeek: [1, 2, 1] }, true).map(({ likely }) => likely)).toEqual([70, 40, 0]);
  });

  test("without spread low and high are the likely stems; with it they stand either side", () => {
    for (const { low, likely, high } of weeksOf({ yieldSpread: 0 })) expect([low, high]).toEqual([likely, likely]);
    for (const { low, likely, high } of weeksOf({ yieldSpread: 0.3 })) {
      expect(low).toBeLessThan(likely);
      expect(high).toBeGreaterThan(likely);
    }
  });
});
