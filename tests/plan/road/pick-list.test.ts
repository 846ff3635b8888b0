import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { checkMatch } from "#lib/plan/road/match";
import { type PickLine, placeOf } from "#lib/plan/road/pick-list";
import { provenPlan } from "../../proven-plan";
import { bed, booking, crop, day, focal, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";
import { goodShareOf } from "./bloom-by-spec";

const sourced = (count: number) => ({ count, mark: "own" as const, source: null });
const linesOf = (given: Partial<Snapshot>) => provenPlan(snapshot(given), 2027).pickList;
const sum = (list: readonly { stems: number }[]) => list.reduce((total, { stems }) => total + stems, 0);

describe("what to cut, for whom", () => {
  test("[P1] 25 stems for Saturday the 12th: 10 on Thursday, held 2 days, and 15 on Wednesday, held 3", () => {
    const lines = linesOf({ bookings: [booking({ id: 1, stemLines: focal(25) })] });
    expect(lines.map((line) => [toDay(line.cutDay), placeOf(line.stand), line.stems, line.heldDays])).toEqual([
      ["2027-06-09", "B1", 15, 3],
      ["2027-06-10", "B1", 10, 2],
    ]);
  });

  test("a fifth graded out, 10 saleable stems are 13 to cut; in bunches of 4 they are 3, in buckets of 50 one", () => {
    const lines = linesOf({
      crops: [crop({ id: 1, bunchStems: sourced(4) })],
      plantings: [planting({ id: 1, gradeOutShare: 0.2, plantCount: 200 })],
      bookings: [booking({ id: 1, stemLines: focal(10) })],
    });
    expect(
      lines.map(({ stems, stemsToCut, bunchCount, bucketCount }) => [stems, stemsToCut, bunchCount, bucketCount]),
    ).toEqual([[10, 13, 3, 1]]);
  });

  test("stems from the cooler are not cut again: nothing is added for grading", () => {
    const lines = linesOf({
      plantings: [],
      coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 10 }],
      bookings: [booking({ id: 1, stemLines: focal(10) })],
    });
    expect(lines.map((line) => [placeOf(line.stand), line.stems, line.stemsToCut])).toEqual([["Cooler", 10, 10]]);
  });

  test("a bed that is called Cooler is told from the cooler, whose stems stand ready", () => {
    const lines = linesOf({
      beds: [bed({ id: 1, name: "Cooler" })],
      coolerStock: [{ id: 1, varietyId: 1, cutOn: day("2027-06-09"), stemCount: 10 }],
      bookings: [booking({ id: 1, stemLines: focal(20) })],
    });
    expect(new Set(lines.map(({ stand }) => placeOf(stand)))).toEqual(new Set(["Cooler", "Bed Cooler"]));
  });

  test("[P1] two roles of one booking from one bed on one day are one line with both roles", () => {
    const lines = linesOf({
      crops: [crop({ id: 1, roles: ["focal", "accent"] })],
      bookings: [booking({ id: 1, stemLines: [...focal(4), ...focal(3, { role: "accent" })] })],
    });
    expect(lines.map(({ stems, roles }) => [stems, roles])).toEqual([[7, ["focal", "accent"]]]);
  });

  test("lines stand by day, then bed as people count (B2 before B10), then booking", () => {
    const lines = linesOf({
      beds: [bed({ id: 1, name: "B10" }), bed({ id: 2, name: "B2" })],
      plantings: [planting({ id: 1 }), planting({ id: 2, bedId: 2 })],
      bookings: [booking({ id: 2, stemLines: focal(15) }), booking({ id: 1, stemLines: focal(35) })],
    });
    const placed = lines.map((line): [string, string, number] => [
      toDay(line.cutDay),
      placeOf(line.stand),
      line.booking.id,
    ]);
    expect(placed.map(([cutOn]) => cutOn)).toEqual(placed.map(([cutOn]) => cutOn).sort());
    expect([...new Set(placed.filter(([cutOn]) => cutOn === "2027-06-09").map(([, bedName]) => bedName))]).toEqual([
      "B2",
      "B10",
    ]);
    expect(sum(lines)).toBe(50);
  });
});

/** Adds stems up by what `keyOf` says. */
function sumsBy<T extends { stems: number }>(
  list: readonly T[],
  keyOf: (row: T) => string | number,
): Map<string | number, number> {
  const sums = new Map<string | number, number>();
  for (const row of list) sums.set(keyOf(row), (sums.get(keyOf(row)) ?? 0) + row.stems);
  return new Map([...sums].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function pickListHolds(given: Snapshot): readonly PickLine[] {
  const { match, pickList } = provenPlan(given, 2027).work;
  expect(checkMatch(match)).toEqual([]);
  const bookingOf = (needIndex: number) => match.needs[needIndex].booking.id;
  expect(sum(pickList)).toBe(sum(match.servings));
  expect(sumsBy(pickList, (line) => line.cutDay)).toEqual(sumsBy(match.servings, (serving) => serving.cutDay));
  expect(sumsBy(pickList, (line) => line.booking.id)).toEqual(
    sumsBy(match.servings, (serving) => bookingOf(serving.needIndex)),
  );
  expect(sumsBy(pickList, (line) => placeOf(line.stand))).toEqual(
    sumsBy(match.servings, (serving) => placeOf(serving.stand)),
  );
  const keys = pickList.map(({ stand, cutDay, booking: { id }, variety }) =>
    JSON.stringify([
      stand.kind === "cooler" ? stand.stock.id : stand.planting.planting.id,
      stand.kind,
      cutDay,
      id,
      variety.id,
    ]),
  );
  expect(new Set(keys).size).toBe(keys.length);
  const faults = pickList.filter(({ stems, stemsToCut, stand, bunchCount, crop: grown, cutDay }) => {
    const isCut = stand.kind === "planting";
    const goodShare = isCut ? goodShareOf(stand.planting.curve, stand.planting.planting, cutDay) || 1 : 1;
    const saleableShare = isCut ? goodShare / (1 + grown.cutSpareShare.count) : 1;
    const isEnough = stemsToCut * saleableShare >= stems - 1e-6 && (stemsToCut - 1) * saleableShare < stems;
    return (
      !isEnough || (bunchCount - 1) * grown.bunchStems.count >= stems || bunchCount * grown.bunchStems.count < stems
    );
  });
  expect(faults.map(({ stems, stemsToCut, bunchCount }) => [stems, stemsToCut, bunchCount])).toEqual([]);
  return pickList;
}

describe("the pick lists of many farms", () => {
  test("[P1] in 200 farms the list sums to the match by booking, by day, by bed and in all, and no line is told twice", () => {
    fc.assert(
      fc.property(anyFarm, (given) => void pickListHolds(given)),
      anySeed,
    );
  });

  test("[P1] so too on 100 seeded farms of 12 beds and 10 bookings", () => {
    let lineCount = 0;
    for (let seed = 1; seed <= 100; seed++)
      lineCount += pickListHolds(seededFarm(seed, { bedCount: 12, bookingCount: 10 })).length;
    expect(lineCount).toBeGreaterThan(500);
  });
});
