import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch, type Match } from "#lib/plan/road/match";
import { stemsOver } from "#lib/plan/road/surplus";
import { provenPlan } from "../../proven-plan";
import { booking, crop, curve, day, focal, monthDay, planting, snapshot, variety } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { hasWhatIsAsked } from "./asked-of-a-stem";
import { lastCutBySpec } from "./event-days-by-spec";
import { keptDays } from "./kept-days";
import { directMatch } from "./match-by-arcs";

/** The match of 2027, proved. */
function matched(given: Snapshot): Match {
  const { match } = provenPlan(given, 2027);
  expect(checkMatch(match)).toEqual([]);
  return match;
}

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });
const sumOf = (servings: readonly { stems: number }[]) => servings.reduce((sum, { stems }) => sum + stems, 0);
const shortOf = (match: Match) => [...match.shortStems];

describe("the hold window", () => {
  /** 12 June 2027 is a Saturday. With 2 lead days and a hold of 4, stems cut on 8, 9 and 10 June serve it. */
  const withStock = (cutOn: string, holdDays: number) =>
    matched(
      snapshot({
        crops: [crop({ id: 1, holdDays: sourced(holdDays) })],
        plantings: [],
        coolerStock: [{ id: 1, varietyId: 1, cutOn: day(cutOn), stemCount: 5 }],
        bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(5) })],
      }),
    );

  test.each([
    ["2027-06-07", 5],
    ["2027-06-08", 0],
    ["2027-06-10", 0],
    ["2027-06-11", 5],
    ["2027-06-12", 5],
  ])("[M1] of a crop held 4 days, 5 stems cut on %s leave %i of 5 short on 12 June", (cutOn, shortStems) => {
    expect(shortOf(withStock(cutOn, 4))).toEqual([shortStems]);
  });

  test("[M1] of a crop that keeps less than the 2 lead days no stem serves, whenever it was cut", () => {
    for (const cutOn of ["2027-06-09", "2027-06-10", "2027-06-11", "2027-06-12"])
      for (const holdDays of [0, 1, 1.9]) expect(shortOf(withStock(cutOn, holdDays))).toEqual([5]);
  });

  test("[M1] a hold of 3 and a half days does not reach the fourth", () => {
    expect(shortOf(withStock("2027-06-09", 3.5))).toEqual([0]);
    expect(shortOf(withStock("2027-06-08", 3.5))).toEqual([5]);
  });

  test("[M1] [M2] in 200 farms no stem serves what its window or its fit forbids", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { needs, supplies, servings } = matched(given);
        for (const { needIndex, supplyIndex, cutDay } of servings) {
          const { role, booking, cropId, cropOnly, asks, colours, eventDay } = needs[needIndex];
          const { crop, variety } = supplies[supplyIndex];
          const heldDays = eventDay - cutDay;
          expect(heldDays).toBeGreaterThanOrEqual(lastCutBySpec(given.farm, booking, asks));
          expect(heldDays).toBeLessThanOrEqual(keptDays(crop, given)[1]);
          expect(crop.roles).toContain(role);
          expect(hasWhatIsAsked(asks, crop)).toBe(true);
          expect(booking.unacceptableCropIds).not.toContain(crop.id);
          expect(booking.unacceptableColours).not.toContain(variety.colour);
          if (cropOnly) expect(crop.id).toBe(cropId);
          if (colours.length > 0) expect(colours).toContain(variety.colour);
        }
      }),
      anySeed,
    );
  });
});

describe("who gets the stems", () => {
  const tenOn = (cutOn: string, varietyId: number, id: number) => ({ id, varietyId, cutOn: day(cutOn), stemCount: 10 });
  const varieties = [variety({ id: 1, colour: "cream" }), variety({ id: 2, colour: "blush" })];
  const onTheTable = (given: Partial<Snapshot>) => matched(snapshot({ plantings: [], varieties, ...given }));

  test("[M3] of 10 stems cut on the 8th and 10 on the 10th, the event of the 12th takes the fresh ones", () => {
    const { servings } = onTheTable({
      coolerStock: [tenOn("2027-06-08", 1, 1), tenOn("2027-06-10", 1, 2)],
      bookings: [booking({ id: 1, stemLines: focal(10) })],
    });
    expect(servings.map(({ cutDay, stems }) => [toDay(cutDay), stems])).toEqual([["2027-06-10", 10]]);
  });

  test("[M3] but it takes the old ones when the 14th needs the fresh ones: 10 and 10 served, nobody short", () => {
    const match = onTheTable({
      coolerStock: [tenOn("2027-06-08", 1, 1), tenOn("2027-06-10", 1, 2)],
      bookings: [
        booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(10) }),
        booking({ id: 2, eventOn: day("2027-06-14"), stemLines: focal(10) }),
      ],
    });
    expect(shortOf(match)).toEqual([0, 0]);
    expect(match.servings.map(({ needIndex, cutDay }) => [needIndex, toDay(cutDay)])).toEqual([
      [0, "2027-06-08"],
      [1, "2027-06-10"],
    ]);
  });

  test("[M2] the colour that stands first is given first, and a colour that is not listed is never given", () => {
    const coolerStock = [tenOn("2027-06-10", 1, 1), tenOn("2027-06-10", 2, 2)];
    const given = (colours: ("cream" | "blush" | "plum")[]) =>
      onTheTable({ coolerStock, bookings: [booking({ id: 1, stemLines: focal(12, { colours }) })] });
    const byVariety = (match: Match) =>
      match.servings.map(({ supplyIndex, stems }) => [match.supplies[supplyIndex].variety.colour, stems]);
    expect(byVariety(given(["blush", "cream"]))).toEqual([
      ["cream", 2],
      ["blush", 10],
    ]);
    expect(byVariety(given(["blush"]))).toEqual([["blush", 10]]);
    expect(shortOf(given(["blush"]))).toEqual([2]);
    expect(shortOf(given(["plum"]))).toEqual([12]);
  });

  test("[M4] 10 stems, 8 wanted firmly and 8 by an enquiry: the enquiry is short 6, since 300 cents × 1 weigh more than 300 × 0.3", () => {
    const match = onTheTable({
      coolerStock: [tenOn("2027-06-10", 1, 1)],
      bookings: [
        booking({ id: 1, status: "enquiry", stemLines: focal(8) }),
        booking({ id: 2, status: "confirmed", stemLines: focal(8) }),
      ],
    });
    expect(shortOf(match)).toEqual([6, 0]);
    /** All cut on the last day allowed, so neither fit nor age costs anything: 6 stems × 90 cents. */
    expect(match.solution.totalCost).toBe(6 * 90);
  });

  test("[M4] a stem so cheap to buy that any fit seems dear is given all the same, not left beside the gap", () => {
    const match = onTheTable({
      crops: [crop({ id: 1, buyInCents: sourced(1) })],
      coolerStock: [tenOn("2027-06-08", 2, 1)],
      bookings: [booking({ id: 1, status: "enquiry", stemLines: focal(10, { colours: ["cream", "blush"] }) })],
    });
    expect(shortOf(match)).toEqual([0]);
  });

  test("[M4] in 200 farms no stem that could serve stays unused beside a gap that it fits", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { forecast, match } = provenPlan(given, 2027);
        expect(checkMatch(match)).toEqual([]);
        const { arcs, lots } = directMatch(given, forecast.plantings, match.needs);
        const free = new Set(stemsOver(match, 2027).map(({ variety, cutDay }) => `${variety.id}/${cutDay}`));
        for (const { lot, need } of arcs)
          if (match.shortStems[need] > 0) expect(free.has(`${lots[lot].variety.id}/${lots[lot].day}`)).toBe(false);
      }),
      anySeed,
    );
  });
});

describe("servings", () => {
  test("[M6] stems in the cooler go before those cut the same day, and a need is filled from as few beds as may be", () => {
    const match = matched(
      snapshot({
        curves: [curve({ anchor: { kind: "day-of-year", firstCut: monthDay("06-10") }, stemsPerPlantByWeek: [1] })],
        plantings: [planting({ id: 1 }), planting({ id: 2 })],
        coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-10"), stemCount: 4 }],
        bookings: [booking({ id: 1, stemLines: focal(15) })],
      }),
    );
    /** 70 plants with a stem each in the week from Thursday the 10th open 10 on that day, a picking day, in each bed. */
    expect(match.servings.map(({ stand, stems }) => [stand.kind, stems])).toEqual([
      ["cooler", 4],
      ["planting", 10],
      ["planting", 1],
    ]);
  });

  test("[M6] in 200 farms they are whole stems, and no lot gives more than it has", () => {
    fc.assert(
      fc.property(anyFarm, (given) => {
        const { servings, supplies, needs, shortStems } = matched(given);
        expect(servings.every(({ stems }) => Number.isInteger(stems) && stems > 0)).toBe(true);
        needs.forEach((need, index) => {
          expect(sumOf(servings.filter(({ needIndex }) => needIndex === index))).toBe(need.stems - shortStems[index]);
        });
        supplies.forEach(({ days, lots }, supply) => {
          days.forEach((day, place) => {
            const used = lots[place].map(({ stand, stems }) => {
              const gives = servings.filter((serving) => serving.stand === stand && serving.cutDay === day);
              expect(gives.every(({ supplyIndex }) => supplyIndex === supply)).toBe(true);
              expect(sumOf(gives)).toBeLessThanOrEqual(stems);
              return { kind: stand.kind, left: stems - sumOf(gives), given: sumOf(gives) };
            });
            /** In order of the lots, and the cooler's stand first: a lot gives only once those before it are empty. */
            for (let next = 1; next < used.length; next++) {
              if (used[next].given > 0) expect(used[next - 1].left).toBe(0);
              expect(used[next - 1].kind === "planting" && used[next].kind === "cooler").toBe(false);
            }
          });
        });
      }),
      anySeed,
    );
  });
});
