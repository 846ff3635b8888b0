import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { toDay, toDayNumber } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import { holdOf, holdWindow } from "#lib/plan/road/hold-window";
import type { Plan } from "#lib/plan/road/plan";
import { weekColours } from "#lib/plan/road/week-colours";
import { placed, type RibbonWeek, stemsPerMark, weekCells } from "../../app/season/ribbon/cells";
import { cellPath, dotPath, dotStep, ribbonGeometry } from "../../app/season/ribbon/geometry";
import { Ribbon } from "../../app/season/ribbon/ribbon";
import { provenPlan } from "../proven-plan";
import { day } from "../small-farm";

const bare: RibbonWeek = { needStems: 0, shortStems: 0, covered: [], unclaimed: [] };

describe("the season ribbon", () => {
  test("three or more short weeks in a row have a bracket with their sum, two have none", () => {
    const short = (count: number) => new Array<RibbonWeek>(count).fill({ ...bare, needStems: 20, shortStems: 5 });
    const weeks = [...short(11), bare, ...short(2), bare, ...short(3)];
    const monday = toDayNumber(day("2027-06-07"));
    const drawn = renderToStaticMarkup(
      createElement(Ribbon, {
        label: "Focal stems",
        mondays: weeks.map((_, week) => toDay(monday + 7 * week)),
        winters: [{ key: "stands", weeks }],
        frostDay: day("2027-10-18"),
      }),
    );
    const words = [...drawn.matchAll(/\d+ short in \w+ weeks/g)].map(([bracket]) => bracket);
    expect(words).toEqual(["55 short in eleven weeks", "15 short in three weeks"]);
  });

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

  test("a run of marks is three rectangles at the most, which hold as many marks as it counts", () => {
    const geometry = ribbonGeometry(30, 540);
    const marksOf = (path: string) =>
      [...path.matchAll(/h([\d.]+)v([\d.]+)h-/g)].map(
        ([, width, height]) => Math.round(Number(width) / geometry.pitch) * Math.round(Number(height) / geometry.pitch),
      );
    for (let first = 0; first < 7; first++)
      for (let count = 1; count < 20; count++) {
        const marks = marksOf(cellPath(geometry, 4, first, count));
        expect(marks.length).toBeLessThanOrEqual(3);
        expect(marks.reduce((sum, some) => sum + some, 0)).toBe(count);
      }
  });

  test("a run of dots is a line for each row that it touches, as long as its dots", () => {
    const geometry = ribbonGeometry(30, 540);
    const step = dotStep(geometry);
    for (let first = 0; first < 14; first++)
      for (let count = 1; first + count <= 14; count++) {
        const lines = [...dotPath(geometry, 0, first, count).matchAll(/h([\d.]+)/g)].map(([, length]) =>
          Math.round(Number(length) / step + 1),
        );
        expect(lines.reduce((sum, dots) => sum + dots, 0)).toBe(count);
      }
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

/** The stems of a role that nobody has and that could serve a week, by the definition: each surplus stem against each day of the week. */
function unclaimedByDefinition({ snapshot, match, work: { unclaimed }, weeks }: Plan, role: Role): number[] {
  const takes = new Set(match.supplies.flatMap(({ crop, variety }) => (crop.roles.includes(role) ? variety.id : [])));
  return weeks.map(({ monday }) => {
    const first = toDayNumber(monday);
    const events = match.needs.map(({ eventDay }) => eventDay).filter((day) => day >= first && day < first + 7);
    const days = events.length > 0 ? events : [first + 5];
    const could = unclaimed.filter(
      ({ variety, crop, cutDay }) =>
        takes.has(variety.id) &&
        days.some((day) => {
          const { earliest, latest } = holdWindow(day, snapshot.farm.leadDays, holdOf(crop, snapshot.farm));
          return cutDay >= earliest && cutDay <= latest;
        }),
    );
    return could.reduce((sum, { stems }) => sum + stems, 0);
  });
}

test("[G5] on 20 seeded farms the colours of every week and role sum to what the week covers, and the unclaimed ones to those that could serve it", () => {
  for (let seed = 1; seed <= 20; seed++) {
    const plan = provenPlan(seededFarm(seed, { bedCount: 24, bookingCount: 20 }), 2027);
    for (const role of ROLES) {
      const free = unclaimedByDefinition(plan, role);
      weekColours(plan, role).forEach(({ covered, unclaimed }, week) => {
        const stems = covered.reduce((sum, row) => sum + row.stems, 0);
        expect(stems).toBe(plan.weeks[week].roles[ROLES.indexOf(role)].coveredStems);
        expect(unclaimed.reduce((sum, row) => sum + row.stems, 0)).toBe(free[week]);
      });
    }
  }
});
