import { describe, expect, it } from "vitest";
import { toDayNumber } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import { budWalk } from "#lib/plan/learning/season/bud-walk";
import { timingOf } from "#lib/plan/learning/season/look-timing";
import { seasonLesson } from "#lib/plan/learning/season/season-lesson";
import { bed, crop, curve, day, planting, snapshot, variety } from "../../../small-farm";

/** Two beds of one crop, due on 7 June. */
const FARM = snapshot({
  crops: [crop({ id: 1 })],
  varieties: [1, 2].map((id) => variety({ id })),
  curves: [curve({ stemsPerPlantByWeek: [1, 1, 1], firstCutSpreadDays: 8 })],
  beds: [1, 2].map((id) => bed({ id })),
  plantings: [1, 2].map((id) => planting({ id, bedId: id, varietyId: id, plantCount: 50 })),
});

const look = (given: Partial<BudLook>): BudLook => ({
  id: 1,
  lookedOn: day("2027-06-01"),
  bedId: 1,
  varietyId: 1,
  sign: "as due",
  daysToCut: null,
  ...given,
});

const late = (budLooks: readonly BudLook[]) =>
  [1, 2].map((id) => Math.round(seasonLesson({ ...FARM, budLooks }, 2027)?.plantings.get(id)?.daysLate ?? 0) + 0);

describe("a walk along the buds", () => {
  it("[O2] a look says days late: a number of days to go, first bloom, or a sign", () => {
    const due = toDayNumber(day("2027-06-07"));
    expect(timingOf(look({ daysToCut: 10 }), due)).toEqual({ says: "came", daysLate: 4, spreadDays: 3.5 });
    expect(timingOf(look({ sign: "first bloom", lookedOn: day("2027-06-12") }), due)).toMatchObject({
      says: "came",
      daysLate: 5,
    });
    expect(timingOf(look({ sign: "late" }), due)).toMatchObject({ says: "came", daysLate: 6 });
    expect(timingOf(look({ sign: "early" }), due)).toMatchObject({ says: "came", daysLate: -6 });
    expect(timingOf(look({ sign: "as due" }), due)).toMatchObject({ says: "came", daysLate: 0 });
    expect(timingOf(look({ sign: "buds showing", lookedOn: day("2027-06-10") }), due)).toMatchObject({
      says: "not yet",
      daysLate: 3,
    });
  });

  it("[O3] late buds in one bed make the other late too, but less", () => {
    const [seen, other] = late([look({ daysToCut: 14 })]);
    expect(seen).toBeGreaterThan(5);
    expect(other).toBeGreaterThan(1);
    expect(other).toBeLessThan(seen);
    expect(late([look({ sign: "as due" })])).toEqual([0, 0]);
  });

  it("[O3] buds not open after the day they were due make the bed late; the last judgement counts, not each", () => {
    expect(late([look({ sign: "buds showing", lookedOn: day("2027-06-14") })])[0]).toBeGreaterThan(7);
    const twice = [look({ sign: "late" }), look({ id: 2, sign: "as due", lookedOn: day("2027-06-05") })];
    expect(late(twice)).toEqual(late([twice[1]]));
    expect(late([...twice].reverse())).toEqual(late(twice));
  });

  it("lists what is due within four weeks or ten days over it and not cut yet, by the day that was learned", () => {
    const on = (text: string, given = {}) =>
      budWalk({ ...FARM, ...given }, 2027, toDayNumber(day(text))).map(({ row }) => row.bed.id);
    expect(on("2027-05-09")).toEqual([]);
    expect(on("2027-05-10")).toEqual([1, 2]);
    expect(on("2027-06-17")).toEqual([1, 2]);
    expect(on("2027-06-18")).toEqual([]);
    const cut = {
      id: 1,
      cutOn: day("2027-06-07"),
      bedId: 1,
      varietyId: 1,
      bookingId: null,
      stemsCut: 3,
      stemsAsked: null,
      goodStems: null,
      restStands: false,
    };
    expect(on("2027-06-08", { cuts: [cut] })).toEqual([2]);
    const [stop] = budWalk({ ...FARM, budLooks: [look({ daysToCut: 14 })] }, 2027, toDayNumber(day("2027-06-02")));
    expect(stop.dueDay).toBeGreaterThan(toDayNumber(day("2027-06-11")));
    expect(stop.lastLook?.daysToCut).toBe(14);
  });
});
