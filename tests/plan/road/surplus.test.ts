import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

const sum = (stems: Iterable<number>) => [...stems].reduce((total, count) => total + count, 0);

describe("what is over", () => {
  test("[S1] of 70 stems 25 serve Saturday the 12th: 45 are over, each of use for the 4 days it can be held", () => {
    const { surplus } = provenPlan(snapshot({ bookings: [booking({ id: 1, stemLines: focal(25) })] }), 2027);
    expect(surplus.map(({ cutDay, stems, lastUsefulDay }) => [toDay(cutDay), stems, toDay(lastUsefulDay)])).toEqual([
      ["2027-06-07", 10, "2027-06-11"],
      ["2027-06-09", 5, "2027-06-13"],
      ["2027-06-12", 20, "2027-06-16"],
      ["2027-06-14", 10, "2027-06-18"],
    ]);
  });

  test("a hold of 4 and a half days ends on the fourth", () => {
    const crops = [crop({ id: 1, holdDays: { count: 4.5, mark: "own", source: null } })];
    const coolerStock = [{ id: 1, varietyId: 1, cutOn: day("2027-06-01"), stemCount: 3 }];
    const { surplus } = provenPlan(snapshot({ crops, plantings: [], coolerStock }), 2027);
    expect(surplus.map(({ stems, lastUsefulDay }) => [stems, toDay(lastUsefulDay)])).toEqual([[3, "2027-06-05"]]);
  });

  test("[S1] [M1] lead days longer than the hold: a stem that keeps 3 days serves no event, and is of use until the third day", () => {
    const crops = [crop({ id: 1, holdDays: { count: 3, mark: "own", source: null } })];
    const coolerStock = [{ id: 1, varietyId: 1, cutOn: day("2027-06-01"), stemCount: 3 }];
    const farmOf = (eventOn: string) =>
      provenPlan(
        snapshot({
          ...{ crops, coolerStock, plantings: [], farm: farm({ leadDays: 5 }) },
          bookings: [booking({ id: 1, eventOn: day(eventOn), stemLines: focal(2) })],
        }),
        2027,
      );
    for (const eventOn of ["2027-06-04", "2027-06-06", "2027-06-07"])
      expect(farmOf(eventOn).match.shortStems[0]).toBe(2);
    expect(farmOf("2027-06-06").surplus.map(({ lastUsefulDay }) => toDay(lastUsefulDay))).toEqual(["2027-06-04"]);
  });
});

function surplusHolds(given: Snapshot): void {
  const { forecast, work } = provenPlan(given, 2027);
  const { match, surplus } = work;
  expect(checkMatch(match)).toEqual([]);
  const cut = sum(forecast.plantings.flatMap(({ usableStems }) => usableStems));
  const stored = sum(given.coolerStock.filter(({ cutOn }) => yearOf(cutOn) === 2027).map(({ stemCount }) => stemCount));
  expect(sum(match.servings.map(({ stems }) => stems)) + sum(surplus.map(({ stems }) => stems))).toBe(cut + stored);
  const keys = surplus.map(({ variety, cutDay }) => `${variety.id}/${cutDay}`);
  expect(new Set(keys).size).toBe(keys.length);
  const had = new Map<string, number>();
  const add = (varietyId: number, cutDay: number, stems: number) =>
    had.set(`${varietyId}/${cutDay}`, (had.get(`${varietyId}/${cutDay}`) ?? 0) + stems);
  for (const { variety, cutDays, usableStems } of forecast.plantings)
    cutDays.forEach((cutDay, index) => {
      add(variety.id, cutDay, usableStems[index]);
    });
  for (const { varietyId, cutOn, stemCount } of given.coolerStock) add(varietyId, toDayNumber(cutOn), stemCount);
  for (const { supplyIndex, cutDay, stems } of match.servings)
    add(match.supplies[supplyIndex].variety.id, cutDay, -stems);
  const left = [...had].filter(([, stems]) => stems > 0);
  expect(new Map(surplus.map((row) => [`${row.variety.id}/${row.cutDay}`, row.stems]))).toEqual(new Map(left));
}

describe("the surplus of many farms", () => {
  test("[S1] in 200 farms stems given and stems over sum to all that can be promised of what is cut, and stored, in all and by variety and day", () => {
    fc.assert(fc.property(anyFarm, surplusHolds), anySeed);
  });

  test("[S1] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
    for (let seed = 1; seed <= 100; seed++) surplusHolds(seededFarm(seed, { bedCount: 12, bookingCount: 10 }));
  });
});
