import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { daysBetween, toDay } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { firstCutDay, warmthOf } from "#lib/plan/road/first-cut";
import { forecast } from "#lib/plan/road/forecast";
import { heatSums, momentOfHeat } from "#lib/plan/road/heat-sums";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { firstCutOn } from "../../first-cut-on";
import { curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";
import { firstCutByAddition } from "./first-cut-by-addition";

const place = (name: string): Climate => {
  const found = CLIMATE_STATIONS.find(({ station }) => station.startsWith(name));
  if (!found) throw new RangeError(`no station ${name}`);
  return found;
};
const RICHMOND = place("Richmond");
const BURLINGTON = place("Burlington");

/** Cut 60 days after planting on 25 May in Richmond; grows above 10 °C. */
const annual = (given: Partial<BloomCurve> = {}): BloomCurve =>
  curve({
    anchor: { kind: "days-after-planting", days: 60 },
    heatBaseC: 10,
    heatFrom: monthDay("05-25"),
    heatPlace: RICHMOND.station,
    ...given,
  });
/** Cut on 12 May in Richmond; spring counts from New Year, above 4.4 °C. */
const perennial = (given: Partial<BloomCurve> = {}): BloomCurve =>
  curve({
    anchor: { kind: "day-of-year", firstCut: monthDay("05-12") },
    heatBaseC: 4.4,
    heatFrom: monthDay("01-01"),
    heatPlace: RICHMOND.station,
    ...given,
  });
const plantedOn = (text: string) => planting({ id: 1, plantedOn: day(text), seasonYear: Number(text.slice(0, 4)) });

describe("adding up heat", () => {
  const sums = heatSums(100, Float64Array.of(2, 4, 0, 6));

  test("[F1] of days with 2, 4, 0 and 6, nine are reached half way through the fourth, six at the end of the second", () => {
    expect(momentOfHeat(sums, 100, 9)).toBeCloseTo(103.5, 6);
    expect(momentOfHeat(sums, 100, 6)).toBeCloseTo(102, 6);
    expect(momentOfHeat(sums, 101, 4)).toBeCloseTo(102, 6);
  });

  test("[F1] thirteen are never reached, and days that were not added up give nothing", () => {
    expect(momentOfHeat(sums, 100, 13)).toBeNull();
    expect(momentOfHeat(sums, 99, 1)).toBeNull();
  });
});

/** The first cut as a day, by the slow second method. */
const byAddition = (of: BloomCurve, set: ReturnType<typeof plantedOn>, climate: Climate): string | null => {
  const cut = firstCutByAddition(of, set, climate);
  return cut === null ? null : toDay(cut);
};

describe("a first cut by warmth", () => {
  test("[F1] is that of adding day after day, on 400 curves, plantings, places and years", () => {
    const random = seededRandom(9);
    const anyOf = <T>(list: readonly T[]): T => list[wholeBetween(random, 0, list.length - 1)];
    let neverCount = 0;
    for (let run = 0; run < 400; run++) {
      const base = Math.round(random() * 120) / 10;
      const heatCeilingC = random() < 0.3 ? base + 8 + random() * 15 : null;
      const heatLimitC = heatCeilingC !== null && random() < 0.5 ? heatCeilingC + 3 + random() * 10 : null;
      const clock = { heatBaseC: base, heatCeilingC, heatLimitC };
      const heatPlace = random() < 0.8 ? anyOf(CLIMATE_STATIONS).station : null;
      const of =
        random() < 0.5
          ? annual({
              ...clock,
              heatPlace,
              anchor: { kind: "days-after-planting", days: wholeBetween(random, 20, 200) },
            })
          : perennial({ ...clock, heatPlace, heatFrom: monthDay(anyOf(["01-01", "02-01", "09-20"])) });
      const set = plantedOn(
        `${wholeBetween(random, 2026, 2029)}-0${wholeBetween(random, 2, 9)}-1${wholeBetween(random, 0, 9)}`,
      );
      const climate = anyOf(CLIMATE_STATIONS);
      const told = firstCutDay(of, set, warmthOf({ climate }));
      expect(told && toDay(told)).toBe(byAddition(of, set, climate));
      if (told === null) neverCount++;
    }
    expect(neverCount).toBeGreaterThan(5);
    expect(neverCount).toBeLessThan(100);
  });

  test("[F1] at its known place and from its known day the known point stays true, in leap years too", () => {
    for (const climate of CLIMATE_STATIONS)
      for (const year of [2026, 2027, 2028, 2029]) {
        const annualCut = firstCutOn(annual({ heatPlace: climate.station }), plantedOn(`${year}-05-25`), climate);
        expect(daysBetween(day(`${year}-05-25`), annualCut)).toBe(60);
        expect(firstCutOn(perennial({ heatPlace: null }), plantedOn(`${year}-03-01`), climate)).toBe(`${year}-05-12`);
      }
  });

  test("[F1] two sowings two weeks apart in spring bloom less than two weeks apart, and none overtakes an earlier one", () => {
    for (const climate of CLIMATE_STATIONS) {
      const cuts = ["04-10", "04-24", "05-08", "05-22", "06-05"].map((monthDay) =>
        firstCutOn(annual(), plantedOn(`2027-${monthDay}`), climate),
      );
      const apart = cuts.slice(1).map((cut, index) => daysBetween(cuts[index], cut));
      expect(Math.min(...apart)).toBeGreaterThan(0);
      expect(Math.max(...apart.slice(0, 3))).toBeLessThan(14);
    }
  });

  test("[F1] a colder place blooms later, whichever way warmth is counted", () => {
    for (const of of [annual(), perennial()])
      expect(
        daysBetween(
          firstCutOn(of, plantedOn("2027-05-25"), RICHMOND),
          firstCutOn(of, plantedOn("2027-05-25"), BURLINGTON),
        ),
      ).toBeGreaterThan(10);
  });

  test("[F1] without a climate, or without a clock, the calendar tells it", () => {
    expect(firstCutOn(annual(), plantedOn("2027-04-01"))).toBe("2027-05-31");
    expect(firstCutOn(annual({ heatBaseC: null, heatFrom: null }), plantedOn("2027-04-01"), BURLINGTON)).toBe(
      "2027-05-31",
    );
    // Nothing grows above 50 °C: the known point has no warmth to count, so that the calendar stands.
    expect(firstCutOn(perennial({ heatBaseC: 50 }), plantedOn("2027-04-01"), BURLINGTON)).toBe("2027-05-12");
  });

  test("[F7] set out on 10 September in Burlington it does not bloom, and the plan says that the warmth is lacking", () => {
    const late = snapshot({
      farm: farm({ climate: BURLINGTON }),
      curves: [annual({ anchor: { kind: "days-after-planting", days: 90 } })],
      plantings: [plantedOn("2027-09-10")],
    });
    const { plantings, problems } = forecast(late, 2027);
    expect(plantings[0].openedStems).toBe(0);
    expect(problems.map((row) => barrenInWords(row).message)).toEqual([
      "planted on 2027-09-10 it never gathers the warmth that it needs to bloom in 2027: it is forecast at 0 stems. Mend the planting day or the season.",
    ]);
  });
});
