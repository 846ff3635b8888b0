import { beforeAll, describe, expect, test } from "vitest";
import { loadMixedIntegerSolver, type MixedIntegerSolver, type Programme, solveOnce } from "#lib/maths/mixed-integer";
import { seededRandom, wholeBetween } from "#lib/maths/random";

let solver: MixedIntegerSolver;
beforeAll(async () => {
  solver = await loadMixedIntegerSolver();
});

/** Take the dearest of some things within a weight: least of minus the worth. */
const knapsack = (worth: readonly number[], weights: readonly number[], atMost: number): Programme => ({
  costs: worth.map((cents) => -cents),
  lowers: worth.map(() => 0),
  uppers: worth.map(() => 1),
  isWhole: worth.map(() => true),
  rows: [{ lower: Number.NEGATIVE_INFINITY, upper: atMost, columns: [...worth.keys()], coefficients: [...weights] }],
});

describe("the solver", () => {
  test("is loaded once, however often it is asked for", async () => {
    expect(await loadMixedIntegerSolver()).toBe(solver);
  });

  test("whole columns: of 60, 100 and 120 at 10, 20 and 30 with room for 50, the last two are taken", () => {
    const answer = solveOnce(solver, knapsack([60, 100, 120], [10, 20, 30], 50));
    expect(answer.status).toBe("optimal");
    expect(answer.objective).toBeCloseTo(-220, 6);
    expect(Array.from(answer.columns, Math.round)).toEqual([0, 1, 1]);
  });

  test("the same without whole columns takes two thirds of the last and is worth 240", () => {
    const whole = knapsack([60, 100, 120], [10, 20, 30], 50);
    const answer = solveOnce(solver, { ...whole, isWhole: whole.isWhole.map(() => false) });
    expect(answer.objective).toBeCloseTo(-240, 6);
    expect(answer.columns[2]).toBeCloseTo(2 / 3, 6);
    expect(answer.reducedCosts[2]).toBeCloseTo(0, 6);
    expect(answer.rowSums[0]).toBeCloseTo(50, 6);
  });

  test("says infeasible when no columns keep to the rows", () => {
    const programme = knapsack([1, 1], [1, 1], -1);
    expect(solveOnce(solver, programme).status).toBe("infeasible");
    expect(solveOnce(solver, { ...programme, isWhole: [false, false] }).status).toBe("infeasible");
  });

  test("a programme without a column is refused", () => {
    expect(() => solver.open({ costs: [], lowers: [], uppers: [], isWhole: [], rows: [] })).toThrow(RangeError);
  });

  test("an open programme follows its rows and bounds as they come and go", () => {
    const opened = solver.open({
      costs: [-1, -1],
      lowers: [0, 0],
      uppers: [4, 4],
      isWhole: [false, false],
      rows: [],
    });
    expect(opened.solve().objective).toBeCloseTo(-8, 6);
    const row = (upper: number) => ({ lower: Number.NEGATIVE_INFINITY, upper, columns: [0, 1], coefficients: [1, 1] });
    opened.addRows([row(6), row(5)]);
    expect(opened.solve().objective).toBeCloseTo(-5, 6);
    opened.removeRows([1]);
    expect(opened.solve().objective).toBeCloseTo(-6, 6);
    opened.setBounds([0, 0], [1, 1]);
    expect(opened.solve().objective).toBeCloseTo(-2, 6);
    opened.addRows([]);
    opened.removeRows([]);
    expect(opened.solve().rowSums).toHaveLength(1);
    opened.close();
  });

  test("told to stop in the midst of a hard programme, it ends as stopped, after a few more questions at most", () => {
    const random = seededRandom(5);
    const columns = [...Array(80).keys()];
    const row = (): Programme["rows"][number] => {
      const coefficients = columns.map(() => wholeBetween(random, 1, 1000));
      const upper = Math.floor(coefficients.reduce((sum, weight) => sum + weight, 0) / 3);
      return { lower: Number.NEGATIVE_INFINITY, upper, columns, coefficients };
    };
    const hard: Programme = {
      costs: columns.map(() => -wholeBetween(random, 1, 1000)),
      lowers: columns.map(() => 0),
      uppers: columns.map(() => 1),
      isWhole: columns.map(() => true),
      rows: Array.from({ length: 30 }, row),
    };
    let askedCount = 0;
    const answer = solveOnce(solver, hard, () => ++askedCount > 20);
    expect(answer.status).toBe("stopped");
    expect(askedCount).toBeLessThan(40);
    expect(answer.bound).toBeLessThanOrEqual(answer.objective);
  });

  test("agrees with every subset tried, on 30 seeded knapsacks of 10 things", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const random = seededRandom(seed);
      const worth = Array.from({ length: 10 }, () => wholeBetween(random, 1, 1000));
      const weights = Array.from({ length: 10 }, () => wholeBetween(random, 1, 50));
      let most = 0;
      for (let bits = 0; bits < 1024; bits++) {
        const taken = [...worth.keys()].filter((index) => bits & (1 << index));
        const weight = taken.reduce((sum, index) => sum + weights[index], 0);
        if (weight <= 120)
          most = Math.max(
            most,
            taken.reduce((sum, index) => sum + worth[index], 0),
          );
      }
      const answer = solveOnce(solver, knapsack(worth, weights, 120));
      expect(answer.objective, `seed ${seed}`).toBeCloseTo(-most, 5);
      expect(answer.bound).toBeGreaterThan(-most - 0.51);
    }
  });
});
