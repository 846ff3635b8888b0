import { beforeAll, describe, expect, test } from "vitest";
import { type LinearSolver, loadLinearSolver, type Programme, solveOnce } from "#lib/maths/linear-programme";
import { seededRandom, wholeBetween } from "#lib/maths/random";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

/** Take the dearest of some things, in part if need be, within a weight: least of minus the worth. */
const knapsack = (worth: readonly number[], weights: readonly number[], atMost: number): Programme => ({
  costs: worth.map((cents) => -cents),
  lowers: worth.map(() => 0),
  uppers: worth.map(() => 1),
  rows: [{ lower: Number.NEGATIVE_INFINITY, upper: atMost, columns: [...worth.keys()], coefficients: [...weights] }],
});

describe("the solver", () => {
  test("is loaded once, however often it is asked for", async () => {
    expect(await loadLinearSolver()).toBe(solver);
  });

  test("of 60, 100 and 120 at 10, 20 and 30 with room for 50 it takes two thirds of the last: 240, and 4 more for each unit of room", () => {
    const answer = solveOnce(solver, knapsack([60, 100, 120], [10, 20, 30], 50));
    expect(answer?.objective).toBeCloseTo(-240, 6);
    expect(answer?.columns[2]).toBeCloseTo(2 / 3, 6);
    expect(answer?.rowSums[0]).toBeCloseTo(50, 6);
    expect(answer?.rowPrices[0]).toBeCloseTo(-4, 6);
  });

  test("gives null when no columns keep to the rows", () => {
    expect(solveOnce(solver, knapsack([1, 1], [1, 1], -1))).toBeNull();
  });

  test("a programme without a column is refused", () => {
    expect(() => solver.open({ costs: [], lowers: [], uppers: [], rows: [] })).toThrow(RangeError);
  });

  test("an open programme follows its rows and bounds as they come and go", () => {
    const opened = solver.open({ costs: [-1, -1], lowers: [0, 0], uppers: [4, 4], rows: [] });
    expect(opened.solve()?.objective).toBeCloseTo(-8, 6);
    const row = (upper: number) => ({ lower: Number.NEGATIVE_INFINITY, upper, columns: [0, 1], coefficients: [1, 1] });
    opened.addRows([row(6), row(5)]);
    expect(opened.solve()?.objective).toBeCloseTo(-5, 6);
    opened.removeRows([1]);
    expect(opened.solve()?.objective).toBeCloseTo(-6, 6);
    opened.setBounds([0, 0], [1, 1]);
    expect(opened.solve()?.objective).toBeCloseTo(-2, 6);
    opened.addRows([]);
    opened.removeRows([]);
    expect(opened.solve()?.rowSums).toHaveLength(1);
    opened.close();
  });

  test("agrees with greed, dearest by weight first, on 30 seeded knapsacks of 10 things", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const random = seededRandom(seed);
      const worth = Array.from({ length: 10 }, () => wholeBetween(random, 1, 1000));
      const weights = Array.from({ length: 10 }, () => wholeBetween(random, 1, 50));
      let room = 120;
      let most = 0;
      for (const index of [...worth.keys()].sort((a, b) => worth[b] / weights[b] - worth[a] / weights[a])) {
        const share = Math.min(1, room / weights[index]);
        most += share * worth[index];
        room -= share * weights[index];
      }
      expect(solveOnce(solver, knapsack(worth, weights, 120))?.objective, `seed ${seed}`).toBeCloseTo(-most, 5);
    }
  });
});
