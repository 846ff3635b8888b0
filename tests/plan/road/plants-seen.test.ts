import { describe, expect, test } from "vitest";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Loss } from "#lib/domain/records/loss";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecast, frostDayOf } from "#lib/plan/road/forecast";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { booking, crop, curve, day, farm, focal, monthDay, planting, snapshot } from "../../small-farm";
import { loss } from "./any-loss";
import { on, shortOf } from "./lived-season";

const number = (text: string) => toDayNumber(day(text));

/** 70 stems in the week from Monday 7 June, ten a day, cut each day; the first wedding wants 20, the second 40. */
const FARM = snapshot({
  farm: farm({ pickingWeekdays: [1, 2, 3, 4, 5, 6, 7], leadDays: 1 }),
  crops: [crop({ id: 1, holdDays: { count: 4, mark: "own", source: null } })],
  curves: [curve({ stemsPerPlantByWeek: [1], anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
  plantings: [planting({ id: 1, plantCount: 70 })],
  bookings: [
    booking({ id: 1, eventOn: day("2027-06-11"), stemLines: focal(20) }),
    booking({ id: 2, eventOn: day("2027-06-13"), stemLines: focal(40) }),
  ],
});

/** Stems cut from the 7th to the 13th. */
const perDay = (snap: Snapshot): number[] => {
  const [{ cutDays, cutStems }] = forecast(snap, 2027).plantings;
  return Array.from({ length: 7 }, (_, at) => cutStems[cutDays.indexOf(number("2027-06-07") + at)] ?? 0);
};

describe("70 plants that give ten stems a day from 7 June", () => {
  test("[PL1] half of the plants eaten on Thursday leave five a day from Thursday on, all of them none, none lost all", () => {
    expect(perDay({ ...FARM, losses: [loss()] })).toEqual([10, 10, 10, 5, 5, 5, 5]);
    expect(perDay({ ...FARM, losses: [loss({ plantsLeft: 0 })] })).toEqual([10, 10, 10, 0, 0, 0, 0]);
    expect(perDay({ ...FARM, losses: [loss({ plantsLeft: 70 })] })).toEqual(perDay(FARM));
  });

  test("[PL1] of what hail leaves voles take their share: 35 of 70 and then 7 of 35 leave a tenth", () => {
    const both = [
      loss(),
      loss({ id: 2, cause: "hail or wind", seenOn: day("2027-06-12"), plantsBefore: 35, plantsLeft: 7 }),
    ];
    expect(perDay({ ...FARM, losses: both })).toEqual([10, 10, 10, 5, 5, 1, 1]);
    expect(perDay({ ...FARM, losses: [...both].reverse() })).toEqual([10, 10, 10, 5, 5, 1, 1]);
  });

  test("[PL1] the days behind stand as they passed, and the bookings lose what the plants would have given", () => {
    expect(shortOf(on(FARM, "2027-06-10"))).toEqual([0, 0]);
    // The first wedding has 20 of the first three days by then; ten of these are the second's, which lacks 30 of its 40 with nothing to come.
    const eaten = { ...FARM, losses: [loss({ plantsLeft: 0 })] };
    expect(shortOf(on(eaten, "2027-06-10"))).toEqual([0, 30]);
    expect(shortOf(on(eaten, "2027-06-13"))).toEqual([0, 30]);
  });

  test("[PL1] of another bed, of another season, or out of the store it moves nothing", () => {
    for (const other of [
      { bedId: 2 },
      { varietyId: 2 },
      { cause: "winter in store" as const },
      { seenOn: day("2029-06-10") },
    ])
      expect(perDay({ ...FARM, losses: [loss({ plantsLeft: 0, ...other })] })).toEqual(perDay(FARM));
  });

  test("[PL1] bulbs eaten in the autumn are those of the season that follows", () => {
    const eaten = loss({ seenOn: day("2026-11-20"), plantsLeft: 7 });
    expect(perDay({ ...FARM, losses: [eaten] })).toEqual([1, 1, 1, 1, 1, 1, 1]);
    const stoodBefore = { ...FARM, plantings: [...FARM.plantings, planting({ id: 2, seasonYear: 2026 })] };
    expect(perDay({ ...stoodBefore, losses: [eaten] })).toEqual(perDay(FARM));
  });

  test("[PL1] what goes on to the next season are the plants that are left", () => {
    const kept = {
      ...FARM,
      farm: farm({ winter: { ...FARM.farm.winter, winterSurvivalShare: 0.5, replantDeadShare: 0 } }),
      plantings: [planting({ id: 1, plantCount: 70, treatment: "kept-in-ground" })],
    };
    const carried = (losses: Loss[]) => carriedPlantings({ ...kept, losses }, 2027, 2028)[0].plantCount;
    expect(carried([])).toBe(35);
    expect(carried([loss()])).toBe(18);
    expect(carried([loss({ cause: "winter in the ground", seenOn: day("2027-04-20"), plantsLeft: 60 })])).toBe(60);
  });
});

describe("70 clumps kept in the ground, of which half are expected to come through", () => {
  const KEPT = {
    ...FARM,
    farm: farm({
      pickingWeekdays: [1, 2, 3, 4, 5, 6, 7],
      winter: { ...FARM.farm.winter, winterSurvivalShare: 0.5, replantDeadShare: 0 },
    }),
    curves: [curve({ treatment: "kept-in-ground", anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } })],
    plantings: [planting({ id: 1, plantCount: 70, treatment: "kept-in-ground" })],
  };
  const counted = (given: Partial<Loss>) =>
    loss({ cause: "winter in the ground", seenOn: day("2027-04-20"), ...given });

  test("[PL1] 42 counted in spring give six stems a day, and as many as expected what was expected", () => {
    expect(perDay(KEPT)).toEqual([5, 5, 5, 5, 5, 5, 5]);
    expect(perDay({ ...KEPT, losses: [counted({ plantsLeft: 42 })] })).toEqual([6, 6, 6, 6, 6, 6, 6]);
    expect(perDay({ ...KEPT, losses: [counted({ plantsLeft: 35 })] })).toEqual(perDay(KEPT));
    expect(perDay({ ...KEPT, losses: [counted({ plantsBefore: 10, plantsLeft: 6 })] })).toEqual([6, 6, 6, 6, 6, 6, 6]);
  });

  test("[PL1] the last count stands, and one made while it blooms counts from its day", () => {
    const [first, again] = [counted({ plantsLeft: 42 }), counted({ id: 2, seenOn: day("2027-06-10"), plantsLeft: 14 })];
    expect(perDay({ ...KEPT, losses: [first, again] })).toEqual([6, 6, 6, 2, 2, 2, 2]);
  });
});

describe("a tender crop that gives ten stems a day from 7 October, the median frost on the 18th", () => {
  const AUTUMN = {
    ...FARM,
    crops: [crop({ id: 1, tender: true })],
    curves: [curve({ stemsPerPlantByWeek: [1, 1, 1], anchor: { kind: "day-of-year", firstCut: monthDay("10-04") } })],
  };
  const lastCut = (killingFrosts: string[]) => {
    const home = { ...AUTUMN.farm, killingFrosts: killingFrosts.map(day) };
    const [{ cutDays, cutStems }] = forecast({ ...AUTUMN, farm: home }, 2027).plantings;
    return [toDay(cutDays[cutDays.length - 1]), cutStems.reduce((sum, stems) => sum + stems, 0)];
  };

  test("[PL2] a killing frost on the 10th ends it there, one of another year or after the median nowhere else", () => {
    expect(lastCut([])).toEqual(["2027-10-17", 140]);
    expect(lastCut(["2027-10-10"])).toEqual(["2027-10-09", 60]);
    expect(lastCut(["2026-10-10"])).toEqual(["2027-10-17", 140]);
    expect(lastCut(["2027-10-25"])).toEqual(["2027-10-17", 140]);
    expect(frostDayOf({ ...AUTUMN.farm, killingFrosts: [day("2027-10-25")] }, 2027)).toBe(number("2027-10-25"));
  });
});
