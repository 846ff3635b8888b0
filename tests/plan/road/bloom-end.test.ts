import { describe, expect, test } from "vitest";
import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { Snapshot } from "#lib/domain/snapshot";
import { toFahrenheit } from "#lib/domain/weather";
import { forecast } from "#lib/plan/road/forecast";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { crop, curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";
import { catalogueCrop, catalogueCurve } from "../../truth/catalogue-curve";

const everyDay = { pickingWeekdays: [1, 2, 3, 4, 5, 6, 7] };
const grownIn = (given: Partial<Snapshot>) => forecast(snapshot({ farm: farm(everyDay), ...given }), 2027).plantings[0];
const sum = (stems: Iterable<number>) => [...stems].reduce((total, count) => total + count, 0);

const tender = [crop({ id: 1, tender: true })];

describe("a bloom that waits for the frost", () => {
  /** Cut from 2 September, three weeks of 1, 3 and 2 stems a plant; 7 plants; frost on 18 October, which is in the seventh week. */
  const untilFrost = curve({
    anchor: { kind: "day-of-year", firstCut: monthDay("09-02") },
    stemsPerPlantByWeek: [1, 3, 2],
    ends: "frost",
  });
  const set = [planting({ id: 1, plantCount: 7 })];

  test("[F10] of three weeks with 1, 3 and 2 stems goes on with 2 a plant, until the frost lies in its seventh week", () => {
    const { openingStems, opensFrom } = grownIn({ crops: tender, curves: [untilFrost], plantings: set });
    const byWeek = [0, 1, 2, 3, 4, 5, 6].map((week) => sum(openingStems.subarray(week * 7, week * 7 + 7)));
    expect(byWeek).toEqual([7, 21, 14, 14, 14, 14, 14]);
    expect(openingStems).toHaveLength(49);
    expect(toDay(opensFrom + 49)).toBe("2027-10-21");
  });

  test("[F10] nothing of it is cut on the frost day or later, and what the frost takes is of its own week alone", () => {
    const { cutDays, lostToFrostStems, openedStems } = grownIn({ crops: tender, curves: [untilFrost], plantings: set });
    expect(toDay(cutDays.at(-1) ?? 0)).toBe("2027-10-17");
    expect(lostToFrostStems).toBe(6);
    expect(openedStems).toBe(98);
  });

  test("[F10] a frost before its weeks are over makes them no fewer, and a hardy crop or one that ends with its weeks has its own alone", () => {
    const early = farm({
      ...everyDay,
      frost: { ...farm().frost, firstAutumnP10: monthDay("09-01"), firstAutumnP50: monthDay("09-10") },
    });
    expect(grownIn({ farm: early, crops: tender, curves: [untilFrost], plantings: set }).openingStems).toHaveLength(21);
    expect(grownIn({ curves: [untilFrost], plantings: set }).openingStems).toHaveLength(21);
    const byWeeks = { ...untilFrost, ends: "weeks" as const };
    expect(grownIn({ crops: tender, curves: [byWeeks], plantings: set }).openingStems).toHaveLength(21);
  });

  test("[F10] a replanted dahlia bed of 29 April is cut up to the frost of 18 October, not to 29 September", () => {
    const { curves: _, ...facts } = catalogueCrop("Dahlia");
    const { cutDays } = grownIn({
      crops: [crop({ id: 1, ...facts })],
      curves: [curve({ ...catalogueCurve("Dahlia", "spring-planted") })],
      plantings: [planting({ id: 1, treatment: "spring-planted", plantedOn: day("2027-04-29"), plantCount: 100 })],
    });
    expect(toDay(cutDays.at(-1) ?? 0)).toBe("2027-10-17");
  });
});

describe("a bloom that heat ends", () => {
  const RICHMOND = CLIMATE_STATIONS.find(({ station }) => station.startsWith("Richmond")) as Climate;
  const warm = farm({ ...everyDay, climate: RICHMOND });
  const fromMay = curve({
    anchor: { kind: "day-of-year", firstCut: monthDay("05-10") },
    stemsPerPlantByWeek: [1, 1, 1, 1],
    ends: "heat",
    endHighC: 26.7,
  });
  /** The first day from 10 May on whose usual high in Richmond is 80 °F: looked up day by day. */
  const firstHot = [...usualYear(RICHMOND, 2027).highC].findIndex(
    (high, index) => index >= 129 && toFahrenheit(high) >= 80.06,
  );

  test("[F11] in Richmond nothing opens from the first day of 80 °F on, which falls in late May; the days before keep their stems", () => {
    const { openingStems, openedStems } = grownIn({ farm: warm, curves: [fromMay] });
    expect(toDay(firstDayOf(2027) + firstHot) > "2027-05-18" && toDay(firstDayOf(2027) + firstHot) < "2027-05-31").toBe(
      true,
    );
    expect(openingStems).toHaveLength(firstHot - 129);
    const whole = grownIn({ curves: [fromMay] });
    expect([...openingStems]).toEqual([...whole.openingStems.subarray(0, firstHot - 129)]);
    expect(openedStems).toBeLessThan(whole.openedStems);
  });

  test("[F11] a first cut in July is none, which the plan says with its day", () => {
    const late = { ...fromMay, anchor: { kind: "day-of-year" as const, firstCut: monthDay("07-10") } };
    const { problems, plantings } = forecast(snapshot({ farm: warm, curves: [late] }), 2027);
    expect(plantings[0].openedStems).toBe(0);
    expect(barrenInWords(problems[0]).message).toBe(
      "planted on 2027-05-20 it would be cut from 2027-07-10, when days are usually too hot for it: it is forecast at 0 stems. Mend the planting day or the season.",
    );
  });

  test("[F11] in autumn the heat is over: a first cut on 10 October keeps all its weeks", () => {
    const autumn = { ...fromMay, anchor: { kind: "day-of-year" as const, firstCut: monthDay("10-10") } };
    expect(grownIn({ farm: warm, curves: [autumn] }).openingStems).toHaveLength(28);
  });

  test("[F11] built-in ranunculus, anemones, stock and sweet peas end so, and nothing else", () => {
    expect(toDayNumber(day("2027-05-10")) - firstDayOf(2027)).toBe(129);
    for (const name of ["Ranunculus", "Anemone", "Stock", "Sweet pea"])
      for (const { ends, endHighC } of catalogueCrop(name).curves) {
        expect(ends).toBe("heat");
        expect(toFahrenheit(endHighC ?? 0)).toBeGreaterThan(79.9);
        expect(toFahrenheit(endHighC ?? 0)).toBeLessThan(83);
      }
    expect(catalogueCurve("Zinnia", "field").ends).toBe("weeks");
  });
});
