import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { ROLES } from "#lib/domain/words";
import { weekColours } from "#lib/plan/road/week-colours";
import { placed, type RibbonWeek, stemsPerMark, weekCells } from "../../app/season/ribbon/cells";
import { provenPlan } from "../proven-plan";

const bare: RibbonWeek = { needStems: 0, shortStems: 0, covered: [], unclaimed: [] };

describe("the season ribbon", () => {
  test("a week of 50 stems, 20 of them short, is six blooms and four rings at five stems a mark", () => {
    const week: RibbonWeek = {
      ...bare,
      needStems: 50,
      shortStems: 20,
      covered: [
        { colour: "plum", isKept: false, stems: 10 },
        { colour: "white", isKept: false, stems: 15 },
        { colour: "cream", isKept: true, stems: 5 },
      ],
    };
    const cells = weekCells(week, 5);
    expect([cells.cellCount, cells.ringCount]).toEqual([10, 4]);
    expect(cells.runs.map(({ colour, isKept, count }) => `${count} ${colour}${isKept ? " kept" : ""}`)).toEqual([
      "3 white",
      "2 plum",
      "1 cream kept",
      "4 ring",
    ]);
    expect(placed(cells.runs).map(({ first }) => first)).toEqual([0, 3, 5, 6]);
  });

  test("one short stem of 200 still shows a ring, and a week without need shows nothing", () => {
    const week: RibbonWeek = {
      ...bare,
      needStems: 200,
      shortStems: 1,
      covered: [{ colour: "red", isKept: false, stems: 199 }],
    };
    expect(weekCells(week, 5).ringCount).toBe(1);
    expect(weekCells(bare, 5)).toEqual({ cellCount: 0, ringCount: 0, runs: [], dots: [], hasMoreDots: false });
  });

  test("the unit is the smallest that keeps the highest week within 36 rows of three", () => {
    expect([1, 108, 109, 540, 541, 5000].map(stemsPerMark)).toEqual([1, 1, 2, 5, 10, 50]);
  });

  test("more unclaimed stems than two rows of dots are said to be more, in proportion by colour", () => {
    const unclaimed = [
      { colour: "white" as const, isKept: false, stems: 300 },
      { colour: "blue" as const, isKept: false, stems: 100 },
    ];
    const { dots, hasMoreDots } = weekCells({ ...bare, unclaimed }, 5);
    expect(hasMoreDots).toBe(true);
    expect(dots.reduce((sum, { count }) => sum + count, 0)).toBe(14);
  });
});

test("[G5] on 20 seeded farms the colours of every week and role sum to what the week covers, and no unclaimed stem is a claimed one", () => {
  for (let seed = 1; seed <= 20; seed++) {
    const plan = provenPlan(seededFarm(seed, { bedCount: 24, bookingCount: 20 }), 2027);
    const surplus = plan.surplus.reduce((sum, { stems }) => sum + stems, 0);
    for (const role of ROLES)
      weekColours(plan, role).forEach(({ covered, unclaimed }, week) => {
        const stems = covered.reduce((sum, row) => sum + row.stems, 0);
        expect(stems).toBe(plan.weeks[week].roles[ROLES.indexOf(role)].coveredStems);
        expect(unclaimed.reduce((sum, row) => sum + row.stems, 0)).toBeLessThanOrEqual(surplus);
      });
  }
});
