import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { addDays, dayInYear, daysBetween, monthDayOf } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { forecast } from "#lib/plan/road/forecast";
import { curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";

const RICHMOND = CLIMATE_STATIONS.find(({ station }) => station === "Richmond, Virginia") ?? null;

/** Ten stems a plant, 60 days after planting on 20 May in Richmond; of a later planting a twentieth less a week. */
const annual = (given: Partial<BloomCurve> = {}): BloomCurve =>
  curve({
    anchor: { kind: "days-after-planting", days: 60 },
    stemsPerPlantByWeek: [10],
    heatBaseC: 8,
    heatFrom: monthDay("05-20"),
    heatPlace: "Richmond, Virginia",
    sowingDays: 14,
    lateLossShare: 0.05,
    ...given,
  });

const stemsOf = (plantedOn: string, of = annual(), sown = false, climate = RICHMOND): number =>
  forecast(
    snapshot({
      farm: farm({ climate }),
      curves: [of],
      plantings: [planting({ id: 1, plantedOn: day(plantedOn), plantCount: 100, sown })],
    }),
    2027,
  ).plantings[0].openedStems;

describe("fewer stems from late plantings", () => {
  test("[F13] 100 plants of ten stems that lose a twentieth a week give 1,000 on the known day or before, 950 a week later, 800 four weeks later", () => {
    expect(["2027-04-20", "2027-05-20", "2027-05-27", "2027-06-17"].map((set) => stemsOf(set))).toEqual([
      1000, 1000, 950, 800,
    ]);
  });

  test("[F13] sown in place it is late two weeks earlier, and never are more lost than there are", () => {
    expect(stemsOf("2027-05-06", annual(), true)).toBe(1000);
    expect(stemsOf("2027-05-20", annual(), true)).toBe(900);
    expect(stemsOf("2027-06-17", annual({ lateLossShare: 0.5 }))).toBe(0);
  });

  test("[F13] where the calendar tells the first cut, a day of the year does, or no loss is known, all are there", () => {
    expect(stemsOf("2027-06-17", annual(), false, null)).toBe(1000);
    expect(stemsOf("2027-06-17", annual({ lateLossShare: null }))).toBe(1000);
    expect(stemsOf("2027-06-17", annual({ heatBaseC: null, heatFrom: null }))).toBe(1000);
    const spring = {
      anchor: { kind: "day-of-year", firstCut: monthDay("07-19") },
      heatFrom: monthDay("01-01"),
    } as const;
    expect(stemsOf("2027-06-17", annual(spring))).toBe(1000);
  });

  test("[F13] day by day: 200 plantings lose what counting the days past the known one gives", () => {
    const random = seededRandom(13);
    for (let run = 0; run < 200; run++) {
      const set = addDays(day("2027-04-01"), wholeBetween(random, 0, 90));
      const known = addDays(day("2027-04-20"), wholeBetween(random, 0, 50));
      const loss = wholeBetween(random, 0, 10) / 100;
      let daysLate = 0;
      for (let on = known; on < set; on = addDays(on, 1)) daysLate++;
      expect(daysLate).toBe(Math.max(0, daysBetween(known, set)));
      const of = annual({ heatFrom: monthDayOf(known), lateLossShare: loss });
      expect(dayInYear(monthDayOf(known), 2027)).toBe(known);
      expect(Math.abs(stemsOf(set, of) - 1000 * Math.max(0, 1 - (loss * daysLate) / 7))).toBeLessThanOrEqual(
        0.5 + 1e-9,
      );
    }
  });
});
