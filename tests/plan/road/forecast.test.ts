import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber, weekdayOfDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecast, frostDayOf, type PlantingForecast } from "#lib/plan/road/forecast";
import { bed, crop, curve, day, farm, monthDay, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

const grownIn = (given: Partial<Snapshot>): PlantingForecast => forecast(snapshot(given), 2027).plantings[0];
const sum = (stems: Iterable<number>) => [...stems].reduce((total, count) => total + count, 0);
const cutsOf = ({ cutDays, cutStems }: PlantingForecast) =>
  cutDays.map((cutDay, index) => [toDay(cutDay), cutStems[index]]);
const everyDay = farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7] });
const fieldDays = (count: number) => ({ count, mark: "own" as const, source: null });

describe("the first cut", () => {
  test("[F1] a day of the year falls in the planting's season: 7 June of 2027, and of 2029", () => {
    expect(toDay(grownIn({}).opensFrom)).toBe("2027-06-07");
    const later = snapshot({ plantings: [planting({ id: 1, seasonYear: 2029, plantedOn: day("2027-05-20") })] });
    expect(toDay(forecast(later, 2029).plantings[0].opensFrom)).toBe("2029-06-07");
  });

  test("[F1] 90 days after planting on 20 May is 18 August: 11 days left of May, 30 of June, 31 of July, 18 of August", () => {
    const curves = [curve({ anchor: { kind: "days-after-planting", days: 90 } })];
    expect(toDay(grownIn({ curves }).opensFrom)).toBe("2027-08-18");
  });
});

describe("plants alive", () => {
  test("[F2] 80 plants of which 9 in 10 stand are 72", () => {
    expect(grownIn({ plantings: [planting({ id: 1, plantCount: 80, aliveShare: 0.9 })] }).alivePlantCount).toBeCloseTo(
      72,
      9,
    );
  });

  test("[F2] kept in the ground the winter takes its share: 80 × 0.9 × the farm's 0.8 = 57.6, or the planting's own 0.5 = 36", () => {
    const kept = planting({ id: 1, plantCount: 80, aliveShare: 0.9, treatment: "kept-in-ground" });
    expect(grownIn({ plantings: [kept] }).alivePlantCount).toBeCloseTo(57.6, 9);
    expect(grownIn({ plantings: [{ ...kept, winterSurvivalShare: 0.5 }] }).alivePlantCount).toBeCloseTo(36, 9);
  });

  test("[F2] of 100 clumps kept at 0.7 the 30 that die are replanted in half their places and bloom by the replanted curve, day by day as 70 and 15 plants in beds of their own", () => {
    const curves = [
      curve({ id: 1, treatment: "kept-in-ground", stemsPerPlantByWeek: [1, 2, 1] }),
      curve({
        id: 2,
        ...{ treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 20 } },
        stemsPerPlantByWeek: [1, 1.4],
      }),
    ];
    const kept = planting({
      id: 1,
      ...{ plantCount: 100, treatment: "kept-in-ground", winterSurvivalShare: 0.7, plantedOn: day("2025-05-20") },
    });
    const replanting = (replantDeadShare: number) => farm({ winter: { ...farm().winter, replantDeadShare } });
    const both = grownIn({ curves, plantings: [kept], farm: replanting(0.5) });
    const living = grownIn({ curves, plantings: [{ ...kept, plantCount: 70, winterSurvivalShare: 1 }] });
    const late = grownIn({
      curves,
      plantings: [planting({ id: 1, plantCount: 15, treatment: "spring-planted", plantedOn: day("2027-05-20") })],
    });
    const cutOn = (row: typeof both, cutDay: number) => row.cutStems[row.cutDays.indexOf(cutDay)] ?? 0;
    const days = new Set([...living.cutDays, ...late.cutDays]);
    expect(both.cutDays).toEqual([...days].sort((a, b) => a - b));
    for (const cutDay of days) expect(cutOn(both, cutDay)).toBe(cutOn(living, cutDay) + cutOn(late, cutDay));
    expect(both.openedStems).toBe(living.openedStems + 36);
    expect(sum(both.openingStems)).toBe(both.openedStems);
    expect(both.alivePlantCount).toBeCloseTo(70, 9);
    expect(grownIn({ curves, plantings: [kept], farm: replanting(0) }).cutStems).toEqual(living.cutStems);
  });

  test("[F2] what was dug and replanted in spring has no winter to survive", () => {
    const dug = planting({ id: 1, plantCount: 80, treatment: "spring-planted", winterSurvivalShare: 0.5 });
    expect(grownIn({ plantings: [dug] }).alivePlantCount).toBe(80);
  });
});

describe("stems by week and day", () => {
  test("[F3] 70 plants with one stem in a week open 10 a day", () => {
    expect([...grownIn({}).openingStems]).toEqual([10, 10, 10, 10, 10, 10, 10]);
  });

  test("[F3] 5 plants of 1.5 and 0.5 stems give 10 stems, 7.5 and 2.5 by week: 8 and 2, the tie to the earlier", () => {
    const grown = grownIn({
      curves: [curve({ stemsPerPlantByWeek: [1.5, 0.5] })],
      plantings: [planting({ id: 1, plantCount: 5 })],
    });
    expect(sum(grown.openingStems.subarray(0, 7))).toBe(8);
    expect(sum(grown.openingStems.subarray(7))).toBe(2);
    expect(grown.openedStems).toBe(10);
  });

  test("[F3] grade-out is taken before rounding: 7 plants, a stem each, a tenth not saleable: 6.3 are 6 stems", () => {
    expect(grownIn({ plantings: [planting({ id: 1, plantCount: 7, gradeOutShare: 0.1 })] }).openedStems).toBe(6);
  });

  test("[F3] in 200 farms weeks sum to the rounded season, lie within a stem of the curve, and days of a week within one of each other", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        for (const { curve: shape, openingStems, openedStems, alivePlantCount, planting: row } of forecast(given, 2027)
          .plantings) {
          if (!shape) continue;
          if (row.gradeOutShare === null && shape.saleableBySeason.length > 0) continue;
          const plants = alivePlantCount * (1 - (row.gradeOutShare ?? 0));
          expect(openedStems).toBe(Math.floor(plants * sum(shape.stemsPerPlantByWeek) * (1 + 1e-12) + 0.5));
          expect(sum(openingStems)).toBe(openedStems);
          shape.stemsPerPlantByWeek.forEach((stems, week) => {
            const ofWeek = openingStems.subarray(week * 7, week * 7 + 7);
            expect(Math.abs(sum(ofWeek) - plants * stems)).toBeLessThan(1.5);
            expect(Math.max(...ofWeek) - Math.min(...ofWeek)).toBeLessThanOrEqual(1);
          });
        }
      }),
      anySeed,
    );
  });
});

describe("what is cut, and what is lost", () => {
  test("[F4] 10 stems a day from Monday the 7th, picked Mon Wed Thu Sat: 10, 20, 10, 20, and Sunday's wait for the 14th", () => {
    expect(cutsOf(grownIn({}))).toEqual([
      ["2027-06-07", 10],
      ["2027-06-09", 20],
      ["2027-06-10", 10],
      ["2027-06-12", 20],
      ["2027-06-14", 10],
    ]);
  });

  test("[F4] picked on Mondays alone and good for 2 days: what opens from Tuesday to Friday is lost, 40 of 70", () => {
    const grown = grownIn({ farm: farm({ pickingWeekdays: [1] }) });
    expect(cutsOf(grown)).toEqual([
      ["2027-06-07", 10],
      ["2027-06-14", 20],
    ]);
    expect(grown.lostInFieldStems).toBe(40);
    expect(grown.lostToFrostStems).toBe(0);
  });

  test("[F5] frost on Thursday the 10th ends a tender crop picked daily: 30 stems cut, 40 lost to frost", () => {
    const given = { farm: everyDay, crops: [crop({ id: 1, tender: true })] };
    const grown = forecast(snapshot(given), 2027, toDayNumber(day("2027-06-10"))).plantings[0];
    expect(cutsOf(grown).map(([cutOn]) => cutOn)).toEqual(["2027-06-07", "2027-06-08", "2027-06-09"]);
    expect(grown.lostToFrostStems).toBe(40);
  });

  test("[F5] what stood open and uncut on the frost day is lost to frost; what had faded by then, to the field", () => {
    /** Picked on Saturdays, good for 2 days, frost on Friday: Monday's and Tuesday's fade by Wednesday and Thursday, Wednesday's stand until Friday. */
    const given = { farm: farm({ pickingWeekdays: [6] }), crops: [crop({ id: 1, tender: true })] };
    const grown = forecast(snapshot(given), 2027, toDayNumber(day("2027-06-11"))).plantings[0];
    expect([grown.lostInFieldStems, grown.lostToFrostStems]).toEqual([20, 50]);
  });

  test("[F5] a hardy crop is not touched by the frost, and the farm's median date is the one reckoned with", () => {
    const frost = { ...farm().frost, firstAutumnP10: monthDay("06-01"), firstAutumnP50: monthDay("06-09") };
    const early = farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], frost });
    expect(toDay(frostDayOf(early, 2027))).toBe("2027-06-09");
    expect(sum(grownIn({ farm: early }).cutStems)).toBe(70);
    expect(sum(grownIn({ farm: early, crops: [crop({ id: 1, tender: true })] }).cutStems)).toBe(20);
  });

  test("[F6] sprayed on Wednesday and closed until Saturday: Tuesday's stems, good for 4 days, wait until Saturday", () => {
    const grown = grownIn({
      crops: [crop({ id: 1, fieldDays: fieldDays(4) })],
      beds: [bed({ id: 1, noEntryFrom: day("2027-06-09"), noEntryUntil: day("2027-06-12") })],
    });
    expect(cutsOf(grown)).toEqual([
      ["2027-06-07", 10],
      ["2027-06-12", 50],
      ["2027-06-14", 10],
    ]);
  });

  const holdsTogether = (given: Snapshot) => {
    const frostDay = frostDayOf(given.farm, 2027);
    for (const row of forecast(given, 2027).plantings) {
      const {
        openedStems,
        cutDays,
        cutStems,
        lostInFieldStems,
        lostToFrostStems,
        crop: grown,
        bed: inBed,
        opensFrom,
      } = row;
      expect(sum(cutStems) + lostInFieldStems + lostToFrostStems).toBe(openedStems);
      const faults = cutDays.filter((cutDay, index) => {
        const isPickingDay = given.farm.pickingWeekdays.includes(weekdayOfDayNumber(cutDay));
        const isInOrder = index === 0 || cutDay > cutDays[index - 1];
        const isFrosted = grown.tender && cutDay >= frostDay;
        const { noEntryFrom, noEntryUntil } = inBed;
        const isClosed = noEntryFrom && noEntryUntil && toDay(cutDay) >= noEntryFrom && toDay(cutDay) < noEntryUntil;
        /** What is cut on a day opened on it or at most the field days before. */
        const earliest = cutDay - opensFrom - Math.floor(grown.fieldDays.count);
        const openedThen = sum(row.openingStems.subarray(Math.max(0, earliest), cutDay - opensFrom + 1));
        return !isPickingDay || !isInOrder || isFrosted || isClosed || cutStems[index] > openedThen;
      });
      expect(faults).toEqual([]);
    }
  };

  test("[F4] [F5] [F6] in 200 farms what opens is cut, faded or frosted, and cut only when it may be", () => {
    fc.assert(fc.property(anyFarm, holdsTogether), anySeed);
  });

  test("[F4] [F5] so too on 100 seeded farms of the built-in crops", () => {
    for (let seed = 1; seed <= 100; seed++) holdsTogether(seededFarm(seed, { bedCount: 12, bookingCount: 0 }));
  });
});
