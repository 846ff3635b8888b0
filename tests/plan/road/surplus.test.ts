import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Variety } from "#lib/domain/records/variety";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import type { Surplus } from "#lib/plan/road/surplus";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, farm, focal, planting, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { on } from "./lived-season";

const sum = (stems: Iterable<number>) => [...stems].reduce((total, count) => total + count, 0);

describe("what is over", () => {
  test("[S1] of 70 stems 25 serve Saturday the 12th: 45 are over, each of use for the 4 days it can be held", () => {
    const { over } = provenPlan(snapshot({ bookings: [booking({ id: 1, stemLines: focal(25) })] }), 2027).work;
    expect(over.map(({ cutDay, stems, lastUsefulDay }) => [toDay(cutDay), stems, toDay(lastUsefulDay)])).toEqual([
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
  const { match, over } = work;
  expect(checkMatch(match)).toEqual([]);
  const cut = sum(forecast.plantings.flatMap(({ usableStems }) => usableStems));
  const stored = sum(given.coolerStock.filter(({ cutOn }) => yearOf(cutOn) === 2027).map(({ stemCount }) => stemCount));
  expect(sum(match.servings.map(({ stems }) => stems)) + sum(over.map(({ stems }) => stems))).toBe(cut + stored);
  const keys = over.map(({ variety, cutDay }) => `${variety.id}/${cutDay}`);
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
  expect(new Map(over.map((row) => [`${row.variety.id}/${row.cutDay}`, row.stems]))).toEqual(new Map(left));
}

/** Stems still in beds, by variety and day. */
function standing({ forecast: { plantings } }: Plan): Map<string, number> {
  const stems = new Map<string, number>();
  for (const { variety, cutDays, usableStems } of plantings)
    cutDays.forEach((cutDay, index) => {
      const key = `${variety.id}/${cutDay}`;
      stems.set(key, (stems.get(key) ?? 0) + usableStems[index]);
    });
  return stems;
}

/** Each stem over by itself: whether somebody would cut it, or has. Cooler stems of a day go before those in beds. */
function worthCuttingByDefinition(made: Plan): [key: string, stems: number][] {
  const { over } = made.work;
  const uncut = standing(made);
  const alike = (a: Surplus, b: Surplus) =>
    a.crop.id === b.crop.id && a.variety.colour === b.variety.colour && a.crop.stemLength === b.crop.stemLength;
  return over.flatMap((lot): [string, number][] => {
    const key = `${lot.variety.id}/${lot.cutDay}`;
    const stored = lot.stems - Math.min(lot.stems, uncut.get(key) ?? 0);
    const withIt = over.filter((other) => alike(lot, other));
    const stemsOn = (day: number) => sum(withIt.map((row) => (lasts(row, day) ? row.stems : 0)));
    const isInBunch = withIt.some(({ cutDay }) => lasts(lot, cutDay) && stemsOn(cutDay) >= lot.crop.bunchStems.count);
    const stems = isInBunch ? lot.stems : stored;
    return stems > 0 ? [[key, stems]] : [];
  });
}

const lasts = ({ cutDay, lastUsefulDay }: Surplus, day: number) => cutDay <= day && day <= lastUsefulDay;

describe("blooms that nobody would cut", () => {
  const bunchesOf = (count: number) => [crop({ id: 1, bunchStems: { count, mark: "own", source: null } })];
  const surplusOf = (given: Partial<Snapshot>) =>
    provenPlan(snapshot({ bookings: [booking({ id: 1, stemLines: focal(25) })], ...given }), 2027).surplus.map(
      ({ cutDay, stems, standingStems }) => [toDay(cutDay).slice(5), stems, standingStems],
    );

  test("[S2] of 10, 5, 20 and 10 stems over that keep 4 days, no more than 15 and 25 are fresh together until the 13th, 30 from the 14th: in bunches of 30 nobody would cut the first 15", () => {
    const all = [
      ["06-07", 10, 10],
      ["06-09", 5, 5],
      ["06-12", 20, 20],
      ["06-14", 10, 10],
    ];
    expect(surplusOf({ crops: bunchesOf(25) })).toEqual(all.slice(1));
    expect(surplusOf({ crops: bunchesOf(15) })).toEqual(all);
    expect(surplusOf({ crops: bunchesOf(30) })).toEqual(all.slice(2));
    expect(surplusOf({ crops: bunchesOf(31) })).toEqual([]);
  });

  test("[S2] what is cut already is surplus however few it is, and makes a bunch with what stands", () => {
    const coolerStock = [{ id: 1, varietyId: 1, cutOn: day("2027-06-14"), stemCount: 1 }];
    expect(surplusOf({ crops: bunchesOf(31), coolerStock })).toEqual([
      ["06-12", 20, 20],
      ["06-14", 11, 10],
    ]);
    expect(surplusOf({ crops: bunchesOf(32), coolerStock })).toEqual([["06-14", 1, 0]]);
  });

  test("[S2] what was cut for nobody on a morning that is written down is surplus too", () => {
    const cut = { id: 1, cutOn: day("2027-06-07"), bedId: 1, varietyId: 1, bookingId: null };
    const cuts = [{ ...cut, stemsCut: 3, stemsAsked: null, goodStems: null, restStands: false }];
    const { surplus } = on(snapshot({ crops: bunchesOf(71), cuts }), "2027-06-08");
    expect(surplus.map(({ stems, standingStems }) => [stems, standingStems])).toEqual([[3, 0]]);
  });

  test("[S2] other colours and lengths make no bunch with it", () => {
    const plantings = [planting({ id: 1, plantCount: 35 }), planting({ id: 2, varietyId: 2, plantCount: 35 })];
    const twoOf = (second: Partial<Variety>, count: number) =>
      sum(
        provenPlan(
          snapshot({
            ...{ crops: bunchesOf(count), plantings },
            varieties: [variety({ id: 1 }), variety({ id: 2, ...second })],
          }),
          2027,
        ).surplus.map(({ stems }) => stems),
      );
    const alone = sum(
      provenPlan(snapshot({ crops: bunchesOf(30), plantings: plantings.slice(0, 1) }), 2027).surplus.map(
        (row) => row.stems,
      ),
    );
    expect(alone).toBe(0);
    expect(twoOf({}, 30)).toBeGreaterThan(0);
    expect(twoOf({ colour: "plum" }, 30)).toBe(0);
    expect(twoOf({ stemLength: "short" }, 30)).toBe(0);
  });

  test("[S2] in 200 farms it is what a stem by stem reading of the rule finds", () => {
    let notCut = 0;
    fc.assert(
      fc.property(anyFarm, (given) => {
        const made = provenPlan(given, 2027);
        expect(made.surplus.map((row) => [`${row.variety.id}/${row.cutDay}`, row.stems])).toEqual(
          worthCuttingByDefinition(made),
        );
        notCut += made.work.over.length - made.surplus.length;
      }),
      anySeed,
    );
    expect(notCut).toBeGreaterThan(50);
  });
});

describe("the stems over of many farms", () => {
  test("[S1] in 200 farms stems given and stems over sum to all that can be promised of what is cut, and stored, in all and by variety and day", () => {
    fc.assert(fc.property(anyFarm, surplusHolds), anySeed);
  });

  test("[S1] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
    for (let seed = 1; seed <= 100; seed++) surplusHolds(seededFarm(seed, { bedCount: 12, bookingCount: 10 }));
  });
});
