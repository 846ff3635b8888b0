import { expect, test } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import { clumpsToCount } from "#lib/plan/winter/clumps-to-count";
import { lossInWords } from "#lib/plan/words/loss-words";
import { crop, curve, day, monthDay, planting, snapshot } from "../../small-farm";
import { loss } from "../road/any-loss";

const FARM = snapshot({
  crops: [crop({ id: 1, overwinters: true })],
  curves: (["kept-in-ground", "spring-planted"] as const).map((treatment, index) =>
    curve({ id: index + 1, treatment, anchor: { kind: "day-of-year", firstCut: monthDay("07-01") } }),
  ),
  plantings: [
    planting({ id: 1, seasonYear: 2026, treatment: "spring-planted" }),
    planting({ id: 2, treatment: "kept-in-ground" }),
    planting({ id: 3, bedId: 1, varietyId: 1, treatment: "spring-planted", plantedOn: day("2027-05-20") }),
  ],
});
const asked = (on: string, losses = FARM.losses) =>
  clumpsToCount({ ...FARM, losses }, 2027, toDayNumber(day(on))).map(({ row, cause }) => [row.planting.id, cause]);

test("clumps are to be counted from 1 March: kept ones until they bloom, stored ones until four weeks after they went back in", () => {
  const [kept, stored] = [
    [2, "winter in the ground"],
    [3, "winter in store"],
  ];
  expect(asked("2027-02-28")).toEqual([]);
  expect(asked("2027-03-01")).toEqual([kept, stored]);
  expect(asked("2027-06-17")).toEqual([kept, stored]);
  expect(asked("2027-06-18")).toEqual([kept]);
  expect(asked("2027-07-01")).toEqual([]);
});

test("what was counted this season is not asked for again, what was counted another year or eaten is", () => {
  const counted = loss({ cause: "winter in the ground", seenOn: day("2027-04-10") });
  expect(asked("2027-04-11", [counted])).toEqual([[3, "winter in store"]]);
  expect(asked("2027-04-11", [{ ...counted, seenOn: day("2026-04-10") }])).toHaveLength(2);
  expect(asked("2027-04-11", [{ ...counted, cause: "voles" }])).toHaveLength(2);
});

test("a record is told in words", () => {
  expect(lossInWords(loss({ plantsBefore: 40, plantsLeft: 10 }))).toBe("voles left 10 of 40 plants");
  expect(lossInWords(loss({ cause: "winter in store", plantsBefore: 40, plantsLeft: 37 }))).toBe(
    "37 of 40 plants came through the winter in store",
  );
});
