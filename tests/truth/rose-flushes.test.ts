import { expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { dayInYear, toDayNumber } from "#lib/domain/day";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";
import { monthDay } from "../small-farm";
import { catalogueCurve } from "./catalogue-curve";

/** Roses bloom in flushes: a crest, a lull, and the next crest as soon as new shoots have come to bloom. */
const { stemsPerPlantByWeek: weeks, anchor } = catalogueCurve("Garden rose", "field");

/** The weeks in which more opens than in the one before, and no less than in the one after. */
const crests = weeks.flatMap((stems, week) =>
  stems > (weeks[week - 1] ?? 0) && stems >= (weeks[week + 1] ?? 0) ? [week] : [],
);

test("a grown rose has four flushes from late May to October, six weeks from crest to crest and seven to the last (common practice: six to eight)", () => {
  expect(crests.length).toBe(4);
  expect(crests.slice(1).map((crest, index) => crest - crests[index])).toEqual([6, 6, 7]);
});

test("between two flushes is a lull of less than a third of the lower crest", () => {
  crests.slice(1).forEach((crest, index) => {
    const before = crests[index];
    const lull = Math.min(...weeks.slice(before, crest));
    expect(lull / Math.min(weeks[before], weeks[crest])).toBeLessThan(1 / 3);
  });
});

/**
 * From bud break to open flower 479 degree days above 9.5 °C and 589 above 8.1 °C are published for two miniature roses (ROSE-MINI):
 * https://discovery.researcher.life/article/extension-of-a-thermal-unit-model-to-represent-nonlinearities-in-temperature-response-of-miniature-rose-development/7866279919833a11bbc6129cfc3c9b5e
 */
test.each([
  { baseC: 9.5, degreeDays: 479 },
  { baseC: 8.1, degreeDays: 589 },
])(
  "in Asheville a flush follows the one before within a quarter of $degreeDays degree days above $baseC °C (ROSE-MINI)",
  ({ baseC, degreeDays }) => {
    const climate = CLIMATE_STATIONS.find(({ station }) => station === "Asheville, North Carolina");
    if (!climate || anchor.kind !== "day-of-year") throw new RangeError("the station or the rose's day is missing");
    const { highC, lowC } = usualYear(climate, 2027);
    const first = toDayNumber(dayInYear(anchor.firstCut, 2027)) - firstDayOf(2027);
    expect(anchor.firstCut).toBe(monthDay("05-25"));
    crests.slice(1).forEach((crest, index) => {
      let had = 0;
      for (let day = first + crests[index] * 7; day < first + crest * 7; day++)
        had += Math.max(0, (highC[day] + lowC[day]) / 2 - baseC);
      expect(Math.abs(had / degreeDays - 1), `flush ${index + 2}`).toBeLessThan(0.25);
    });
  },
);
