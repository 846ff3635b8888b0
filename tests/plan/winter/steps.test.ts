import { beforeAll, describe, expect, test } from "vitest";
import { LARGE, seededFarm } from "#demo/seeded-farm";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { improved } from "#lib/maths/switch-flow/small-steps";
import { chooseBeds } from "#lib/plan/winter/choose-beds";
import { winterSeason } from "#lib/plan/winter/season";
import { bedVerdicts } from "#lib/plan/winter/verdicts";
import { SEASON, winterFarm } from "./farm";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

/** The solver, with every programme that it solves counted. */
function counting(): { readonly solver: LinearSolver; readonly count: () => number } {
  let solved = 0;
  const open: LinearSolver["open"] = (programme) => {
    const opened = solver.open(programme);
    return {
      ...opened,
      solve: () => {
        solved++;
        return opened.solve();
      },
    };
  };
  return { solver: { open }, count: () => solved };
}

/** A round cuts each part at two points and tries one selection; a split tries two halves of six switches. */
const FLOWS_A_PART = 4;
const PROGRAMMES_A_STEP = 1 + 2 * 6;

describe("a search breathes", () => {
  test("between two steps a choice solves a few flows a part and a few programmes, however long it is: typical and large", () => {
    for (const farm of [winterFarm(601, 80, 60), seededFarm(1, LARGE, SEASON)]) {
      const season = winterSeason(farm, SEASON);
      const counted = counting();
      const choosing = chooseBeds(farm, SEASON, counted.solver, season);
      let before = { flows: season.costs.flowCount, programmes: 0 };
      for (let step = 0; step < 400 && !choosing.next().done; step++) {
        const now = { flows: season.costs.flowCount, programmes: counted.count() };
        expect(now.flows - before.flows).toBeLessThanOrEqual(FLOWS_A_PART * season.costs.parts.length);
        expect(now.programmes - before.programmes).toBeLessThanOrEqual(PROGRAMMES_A_STEP);
        before = now;
      }
    }
  });

  test("bettering a choice yields after every selection that it looks at: 210 beds, every turn and every swap", () => {
    const { costs, openBeds } = winterSeason(seededFarm(1, LARGE, SEASON), SEASON);
    const start = openBeds.map((_, index) => index % 2 === 0);
    const asked = { times: 0 };
    const limit = {
      weights: openBeds.map(() => 0n),
      get atMost() {
        asked.times++;
        return 0n;
      },
    };
    const bettering = improved(costs, [limit], start);
    for (let step = 1; step <= 2000; step++) {
      expect(bettering.next().done).toBe(false);
      expect(asked.times).toBe(step);
    }
  });

  test("verdicts come one bed a step", () => {
    const season = winterSeason(winterFarm(3, 14, 12, false), SEASON);
    expect([...bedVerdicts(season, [])]).toHaveLength(season.futures.beds.length);
    expect(bedVerdicts(season, []).next().value?.bed).toEqual(season.futures.beds[0].bed);
  });
});

describe("a search is left", () => {
  test("a choice stopped at its thousandth step on 210 beds ends in that step, with the best so far and a bound", () => {
    const farm = seededFarm(1, LARGE, SEASON);
    const season = winterSeason(farm, SEASON);
    const choosing = chooseBeds(farm, SEASON, solver, season);
    for (let step = 0; step < 1000; step++) expect(choosing.next().done).toBe(false);
    const flowsBefore = season.costs.flowCount;
    const end = choosing.next(true);
    expect(end.done && end.value.status).toBe("stopped");
    expect(season.costs.flowCount).toBe(flowsBefore);
  });
});
