import { expect, test } from "vitest";
import { adoption } from "#lib/plan/what-if/adoption";
import { comparison } from "#lib/plan/what-if/comparison";
import { adoptionInWords } from "#lib/plan/words/adoption-words";
import { comparedOf } from "../../app/what-if/compare-query";
import { bedToggles, toggledBed } from "../../app/what-if/suppose/bed-toggle";
import { withChange } from "../../app/what-if/suppose/with-change";
import { wouldBePlan } from "../../app/what-if/would-be-plan";
import { dahliaFarm, FITTING, newBooking } from "../plan/what-if/farm";
import { provenPlan } from "../proven-plan";

const YEAR = 2027;

test("a bed's later future takes the place of the earlier; a second shift stands beside the first", () => {
  const shift = { kind: "season-shifted", days: 3, cropId: null } as const;
  const kept = { kind: "bed-kept", bedId: 1 } as const;
  const dug = { kind: "bed-dug", bedId: 1 } as const;
  expect(withChange([kept, shift], dug)).toEqual([shift, dug]);
  expect(withChange([shift], shift)).toEqual([shift, shift]);
});

test("a bed turned back to what it is on the farm leaves no change behind", () => {
  const before = { id: 1, name: "Try", seasonYear: YEAR, changes: [] };
  const kept = toggledBed(dahliaFarm(), before, 1, true);
  expect(kept).toEqual([{ kind: "bed-kept", bedId: 1 }]);
  expect(toggledBed(dahliaFarm(), { ...before, changes: [...kept] }, 1, false)).toEqual([]);
  const { plan: then } = wouldBePlan(provenPlan(dahliaFarm(), YEAR), { ...before, changes: [...kept] });
  expect(
    bedToggles(dahliaFarm(), then.snapshot, YEAR).map(({ isKeptNow, wouldBeKept }) => [isKeptNow, wouldBeKept]),
  ).toEqual([
    [false, true],
    [false, false],
  ]);
});

test("[L3] a what-if is planned from the plan as it stands as it would be planned afresh", () => {
  const now = provenPlan(dahliaFarm(), YEAR);
  const { plan: then } = wouldBePlan(now, { id: 1, name: "Try", seasonYear: YEAR, changes: [...FITTING] });
  const fresh = provenPlan(then.snapshot, YEAR, then.frostDay);
  expect(then.match.shortStems).toEqual(fresh.match.shortStems);
  expect(then.match.solution.totalCost).toBe(fresh.match.solution.totalCost);
  expect(then.weeks).toEqual(fresh.weeks);
});

test("two what-ifs that each add a booking are compared as two bookings", () => {
  const added = (id: number, client: string) =>
    wouldBePlan(provenPlan(dahliaFarm(), YEAR), {
      id,
      name: client,
      seasonYear: YEAR,
      changes: [{ kind: "booking-added", booking: { ...newBooking, client } }],
    }).plan;
  const rows = comparison([provenPlan(dahliaFarm(), YEAR), added(1, "D. Invented"), added(2, "E. Invented")]).bookings;
  expect(rows.find(({ client }) => client === "D. Invented")?.shortStems.map((short) => short === null)).toEqual([
    true,
    false,
    true,
  ]);
  expect(rows.find(({ client }) => client === "E. Invented")?.shortStems.map((short) => short === null)).toEqual([
    true,
    true,
    false,
  ]);
});

test("adopting is told row by row, and no change tells nothing", () => {
  const now = dahliaFarm();
  expect(adoptionInWords(adoption(now, YEAR, []), now)).toEqual([]);
  const lines = adoptionInWords(adoption(now, YEAR, FITTING), now);
  expect(lines).toContain("Booking of B. Invented: removed");
  expect(lines).toContain(
    "Booking of A. Invented: Saturday 21 August 2027 → Saturday 28 August 2027; confirmed → held",
  );
  expect(lines.filter((line) => line.startsWith("First autumn frost"))).toHaveLength(1);
  expect(lines.filter((line) => line.includes("Leaves at hand: as much as wanted → 15.7 cubic yards"))).toHaveLength(1);
  expect(lines.filter((line) => line.includes("kept in the ground over winter"))).toHaveLength(1);
});

test("a late season is adopted for its plantings, said together, and no curve", () => {
  const now = dahliaFarm();
  const late = [
    { kind: "season-shifted", days: 10, cropId: null },
    { kind: "yield-scaled", factor: 0.9, cropId: 1 },
  ] as const;
  expect(adoptionInWords(adoption(now, YEAR, late), now)).toEqual([
    "2 plantings: 10 days late, 90 % of its stems, this season only",
    "1 planting: 10 days late, this season only",
  ]);
});

test("an address shows at most three what-ifs, each once, and says how many found no room; one that names none shows the last three", () => {
  const whatIfs = [1, 2, 3, 4].map((id) => ({ id, name: `Try ${id}`, seasonYear: YEAR, changes: [] }));
  const { compared, leftOutCount } = comparedOf({ with: ["4", "4", "1", "9", "3", "2"] }, whatIfs);
  expect(compared.map(({ id }) => id)).toEqual([4, 1, 3]);
  expect(leftOutCount).toBe(1);
  expect(comparedOf({ with: "2" }, whatIfs).compared.map(({ id }) => id)).toEqual([2]);
  expect(comparedOf({}, whatIfs).compared.map(({ id }) => id)).toEqual([2, 3, 4]);
});
