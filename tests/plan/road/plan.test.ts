import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import type { Plan } from "#lib/plan/road/plan";
import type { Stand } from "#lib/plan/road/supply";
import { provenPlan } from "../../proven-plan";
import { booking, crop, day, focal, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

/** All that a plan says, as text: rows of the farm by their id. The inner workings of the match are its own. */
function saidBy({ forecast, match, gaps, weeks, pickList, buying, surplus, problems }: Plan): string {
  const short = (key: string, part: unknown) => {
    if (key === "stand") return standOf(part as Stand);
    return typeof part === "object" && part !== null && "id" in part ? `row ${part.id}` : part;
  };
  const said = [forecast, match.servings, [...match.shortStems], gaps, weeks, pickList, buying, surplus, problems];
  return JSON.stringify(said, short);
}

const standOf = (stand: Stand): string =>
  stand.kind === "cooler" ? `stock ${stand.stock.id}` : `planting ${stand.planting.planting.id}`;

/** Every object and list of it frozen, so that a write would throw. */
function frozen<T>(whole: T): T {
  if (typeof whole === "object" && whole !== null && !Object.isFrozen(whole)) {
    Object.freeze(whole);
    for (const part of Object.values(whole)) frozen(part);
  }
  return whole;
}

function sameTwice(given: Snapshot): void {
  const before = JSON.stringify(given);
  const first = provenPlan(frozen(structuredClone(given)), 2027);
  expect(checkMatch(first.match)).toEqual([]);
  expect(saidBy(provenPlan(structuredClone(given), 2027))).toBe(saidBy(first));
  expect(JSON.stringify(first.snapshot)).toBe(before);
}

describe("a plan", () => {
  test("walks the road: 70 stems, 30 in reach of Saturday, 40 asked: 30 given, 10 short in one bunch, 40 over", () => {
    const given = provenPlan(snapshot({ bookings: [booking({ id: 1, stemLines: focal(40) })] }), 2027);
    expect(checkMatch(given.match)).toEqual([]);
    expect(given.forecast.plantings[0].openedStems).toBe(70);
    expect(given.pickList.reduce((sum, { stems }) => sum + stems, 0)).toBe(30);
    expect(given.gaps.map(({ shortStems }) => shortStems)).toEqual([10]);
    expect(given.buying.map(({ bunchCount }) => bunchCount)).toEqual([1]);
    expect(given.surplus.reduce((sum, { stems }) => sum + stems, 0)).toBe(40);
    /** 10 held 2 days at no cost, 20 held 3 of 4 days at half of 8 cents, 10 bought in at 300. */
    expect(given.match.solution.totalCost).toBe(20 * 4 + 10 * 300);
  });

  test("reckons with the farm's median frost unless it is told another", () => {
    const tender = snapshot({ crops: [crop({ id: 1, tender: true })] });
    expect(toDay(provenPlan(tender, 2027).frostDay)).toBe("2027-10-18");
    const frosted = provenPlan(tender, 2027, toDayNumber(day("2027-06-01")));
    expect([frosted.frostDay, frosted.forecast.plantings[0].lostToFrostStems]).toEqual([
      toDayNumber(day("2027-06-01")),
      70,
    ]);
  });

  test("[F7] says what stood in its way", () => {
    const { problems } = provenPlan(snapshot({ plantings: [planting({ id: 1, treatment: "tunnel" })] }), 2027);
    expect(problems.map(({ planting: { id } }) => id)).toEqual([1]);
  });

  test("of an empty farm is an empty plan", () => {
    const bare = provenPlan(
      snapshot({ plantings: [], beds: [], crops: [], varieties: [], curves: [], recipes: [] }),
      2027,
    );
    expect([bare.gaps, bare.weeks, bare.pickList, bare.buying, bare.surplus, bare.problems]).toEqual([
      [],
      [],
      [],
      [],
      [],
      [],
    ]);
    expect(bare.match.solution.totalCost).toBe(0);
  });
});

describe("the same plan", () => {
  test("[L1] in 200 farms comes of the same snapshot, and no part of the snapshot is changed by it", () => {
    fc.assert(fc.property(anyFarm, sameTwice), anySeed);
  });

  test("[L1] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
    for (let seed = 1; seed <= 100; seed++) sameTwice(seededFarm(seed, { bedCount: 12, bookingCount: 10 }));
  });

  test("[L1] costs the same when the farm's rows stand in another order", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const turned = {
          ...given,
          varieties: given.varieties.toReversed(),
          curves: given.curves.toReversed(),
          plantings: given.plantings.toReversed(),
          bookings: given.bookings.toReversed(),
          coolerStock: given.coolerStock.toReversed(),
        };
        const { match } = provenPlan(turned, 2027);
        expect(checkMatch(match)).toEqual([]);
        expect(match.solution.totalCost).toBe(provenPlan(given, 2027).match.solution.totalCost);
      }),
      anySeed,
    );
  });
});
