import { beforeAll, describe, expect, test } from "vitest";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { checkSearch } from "#lib/maths/switch-flow/check-search";
import { keepsTo, type Selection, type SwitchProblem } from "#lib/maths/switch-flow/problem";
import type { Case, Weights } from "#lib/maths/switch-flow/proof";
import { type SearchEnd, searchSelections } from "#lib/maths/switch-flow/search";
import { SwitchCosts } from "#lib/maths/switch-flow/switch-costs";
import { everySelection, randomSwitches } from "./random-switches";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

function costOf({ flow, effects, switchCost, baseCost }: SwitchProblem, selection: Selection): number {
  const supply = flow.supply.slice();
  let own = baseCost;
  selection.forEach((isOn, index) => {
    if (!isOn) return;
    own += switchCost[index];
    effects[index].nodes.forEach((node, at) => {
      supply[node] += effects[index].units[at];
    });
  });
  return own + minCostFlow({ ...flow, supply }).totalCost;
}

/** The search walked to its end, or stopped after so many steps. */
function searched(seed: number, switchCount: number, steps = Number.POSITIVE_INFINITY) {
  const { problem, limits } = randomSwitches(seed, switchCount);
  const costs = new SwitchCosts(problem);
  const walk = searchSelections(solver, costs, limits, [problem.switchCost.map(() => false)], () => null);
  let step = walk.next();
  for (let done = 0; !step.done; done++) step = walk.next(done >= steps);
  return { problem, limits, still: costs.still, end: step.value };
}

const faultsOf = ({ problem, limits, still, end }: ReturnType<typeof searched>, changed: Partial<SearchEnd> = {}) =>
  checkSearch(problem, limits, still, { ...end, ...changed });

describe("the search over switches", () => {
  test("of 300 problems each finds what trying every selection finds, or that none keeps to the limits, and proves it", () => {
    const seen = { optimal: 0, infeasible: 0, stopped: 0 };
    for (let seed = 1; seed <= 300; seed++) {
      const found = searched(seed, 1 + (seed % 9));
      const { problem, limits, end } = found;
      const least = [...everySelection(problem.switchCost.length)]
        .filter((selection) => keepsTo(limits, selection))
        .reduce((cost, selection) => Math.min(cost, costOf(problem, selection)), Number.POSITIVE_INFINITY);
      expect(end.best?.cost ?? Number.POSITIVE_INFINITY, `seed ${seed}`).toBe(least);
      expect(end.bound, `seed ${seed}`).toBe(least);
      expect(faultsOf(found), `seed ${seed}`).toEqual([]);
      seen[end.status]++;
    }
    expect(seen.infeasible).toBeGreaterThan(10);
    expect(seen.optimal).toBeGreaterThan(200);
  });

  test("stopped anywhere, it proves the bound that it gives: 60 problems of 14 switches", () => {
    let stoppedCount = 0;
    for (let seed = 401; seed <= 460; seed++) {
      const found = searched(seed, 14, seed % 6);
      expect(faultsOf(found), `seed ${seed}`).toEqual([]);
      if (found.end.status === "stopped") stoppedCount++;
    }
    expect(stoppedCount).toBeGreaterThan(20);
  });

  test("without a switch it proves the one selection that there is, or that a limit bars it", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const found = searched(seed, 0);
      expect(faultsOf(found)).toEqual([]);
      expect(found.end.status).toBe(found.limits.every(({ atMost }) => atMost >= 0n) ? "optimal" : "infeasible");
    }
  });
});

/** Every case that is proved by weights, deepest last. */
function* weighedCases({ proof }: Case): Generator<Weights> {
  if (proof.kind === "costs") yield proof;
  if (proof.kind === "cases") {
    yield* weighedCases(proof.off);
    yield* weighedCases(proof.on);
  }
}

/** The proof with every one of its weights' statements changed. */
const withWeights = ({ proof }: Case, change: (weights: Weights) => Weights): Case => ({
  proof:
    proof.kind === "cases"
      ? { ...proof, off: withWeights(proof.off, change), on: withWeights(proof.on, change) }
      : proof.kind === "costs"
        ? change(proof)
        : proof,
});

describe("a certificate that was tampered with is refused", () => {
  const proofs = () =>
    [3, 17, 29, 44, 58, 71, 85, 97].map((seed) => searched(seed, 8)).filter(({ end }) => end.status === "optimal");

  test("a bound of one more, a best that costs one less, another selection, another status", () => {
    for (const found of proofs()) {
      const { best, bound } = found.end;
      if (!best) throw new RangeError("an optimum has a best");
      expect(faultsOf(found)).toEqual([]);
      expect(faultsOf(found, { bound: bound + 1 })).not.toEqual([]);
      expect(faultsOf(found, { best: { ...best, cost: best.cost - 1 }, bound: bound - 1 })).not.toEqual([]);
      const turned = best.selection.map((isOn) => !isOn);
      if (costOf(found.problem, turned) !== best.cost)
        expect(faultsOf(found, { best: { ...best, selection: turned } })).not.toEqual([]);
      expect(faultsOf(found, { status: "infeasible", best: null })).not.toEqual([]);
    }
  });

  test("weights that count a part twice, that are negative, or that are left out", () => {
    let changedCount = 0;
    for (const found of proofs()) {
      if (![...weighedCases(found.end.proof)].some(({ floors }) => floors.length > 0)) continue;
      changedCount++;
      const change = (changed: (weights: Weights) => Weights) =>
        faultsOf(found, { proof: withWeights(found.end.proof, changed) });
      expect(change((weights) => ({ ...weights, floors: [...weights.floors, ...weights.floors] }))).not.toEqual([]);
      expect(
        change((weights) => ({ ...weights, floors: weights.floors.map((row) => ({ ...row, weight: -row.weight })) })),
      ).not.toEqual([]);
      expect(change((weights) => ({ ...weights, floors: [] }))).not.toEqual([]);
      expect(change((weights) => ({ ...weights, limits: weights.limits.map(() => -1n) }))).not.toEqual([]);
      expect(change((weights) => ({ ...weights, parts: 0n }))).not.toEqual([]);
    }
    expect(changedCount).toBeGreaterThan(4);
  });

  test("a floor whose prices let an arc gain, or price a want above what going without costs", () => {
    let changedCount = 0;
    for (const found of proofs()) {
      for (const by of [1, 1000]) {
        const proof = withWeights(found.end.proof, (weights) => ({
          ...weights,
          floors: weights.floors.map((row) => ({
            ...row,
            floor: { ...row.floor, prices: row.floor.prices.map((price) => price + by) },
          })),
        }));
        if (![...weighedCases(proof)].some(({ floors }) => floors.length > 0)) continue;
        changedCount++;
        expect(faultsOf(found, { proof }), `${by}`).not.toEqual([]);
      }
    }
    expect(changedCount).toBeGreaterThan(8);
  });

  test("a proof that leaves out half of the selections, or bars selections that keep to the limits", () => {
    for (const found of proofs()) {
      const { proof } = found.end.proof;
      const barred: Case = { proof: { kind: "barred", limits: found.limits.map(() => 1n) } };
      if (proof.kind === "cases") {
        const best = found.end.best?.selection[proof.index];
        const dropped = best ? { ...proof, on: barred } : { ...proof, off: barred };
        expect(faultsOf(found, { proof: { proof: dropped } })).not.toEqual([]);
      }
      expect(faultsOf(found, { proof: barred })).not.toEqual([]);
    }
  });
});
