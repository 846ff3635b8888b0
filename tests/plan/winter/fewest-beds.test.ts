import { beforeAll, describe, expect, test } from "vitest";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { checkFewest } from "#lib/plan/winter/check-choice";
import { provenFewest } from "#lib/plan/winter/fewest-beds";
import { type WinterSeason, winterSeason } from "#lib/plan/winter/season";
import { fewest as fewestOf } from "./chosen";
import { allowedChoices, SEASON, winterFarm } from "./farm";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

const countOf = (isKept: readonly boolean[]) => isKept.filter(Boolean).length;

/** Focal stems short when focal needs go first: one flow in which nothing else costs. */
function focalShort({ futures: { network, needs, effects } }: WinterSeason, isKept: readonly boolean[]): number {
  const supply = network.flow.supply.slice();
  const unmetCost = new Int32Array(network.flow.nodeCount);
  needs.forEach(({ role }, need) => {
    if (role === "focal") unmetCost[network.nodeOfNeed(need)] = 1;
  });
  isKept.forEach((kept, bed) => {
    if (kept)
      effects[bed].nodes.forEach((node, at) => {
        supply[node] += effects[bed].units[at];
      });
  });
  return minCostFlow({ ...network.flow, supply, unmetCost, cost: new Int32Array(network.flow.arcCount) }).totalCost;
}

describe("the fewest beds", () => {
  test("[K5] on 40 farms no choice leaves fewer focal stems short, and none of fewer beds as few: every subset tried", () => {
    let closedCount = 0;
    for (let seed = 701; seed <= 740; seed++) {
      const season = winterSeason(winterFarm(seed, 14, 10), SEASON);
      const choices = allowedChoices(season.futures);
      const { fewest } = fewestOf(season, solver);
      if (choices.length === 0) {
        expect(fewest.status).toBe("infeasible");
        continue;
      }
      const tried = choices.map((isKept) => ({ short: focalShort(season, isKept), count: countOf(isKept) }));
      const [best] = tried.sort((a, b) => a.short - b.short || a.count - b.count);
      expect(fewest.status, `seed ${seed}`).toBe("optimal");
      expect([fewest.focalShortStems, fewest.keptBedIds.length], `seed ${seed}`).toEqual([best.short, best.count]);
      expect(fewest.boundShortStems).toBe(best.short);
      const { beds } = season.futures;
      const none = beds.map(() => false);
      const all = beds.map(({ forbidden }) => forbidden.length === 0);
      expect(fewest.noneKeptShortStems).toBe(focalShort(season, none));
      expect(fewest.allKeptShortStems).toBe(focalShort(season, all));
      if (fewest.focalShortStems < fewest.noneKeptShortStems) closedCount++;
    }
    expect(closedCount).toBeGreaterThan(10);
  });
});

describe("the fewest beds of larger farms", () => {
  test("[K5] on 6 farms of about 30 beds the certificate proves the stems and the count; a bed or a stem more or fewer is found out", () => {
    for (let seed = 851; seed <= 856; seed++) {
      const season = winterSeason(winterFarm(seed, 60, 45, false), SEASON);
      const proven = fewestOf(season, solver);
      const { keptBedIds, focalShortStems, boundShortStems } = proven.fewest;
      expect(keptBedIds.length, `seed ${seed}`).toBeGreaterThan(0);
      const { best, bound } = proven.search;
      const lies: Partial<typeof proven>[] = [
        { fewest: { ...proven.fewest, keptBedIds: keptBedIds.slice(1) } },
        { fewest: { ...proven.fewest, focalShortStems: focalShortStems + 1 } },
        { fewest: { ...proven.fewest, boundShortStems: boundShortStems + 1 } },
        { fewest: { ...proven.fewest, status: "stopped" } },
        { search: { ...proven.search, bound: bound + 1 } },
        { search: { ...proven.search, best: best && { ...best, cost: best.cost - 1 } } },
      ];
      for (const lie of lies) expect(checkFewest(season, { ...proven, ...lie }), `seed ${seed}`).not.toEqual([]);
    }
  });
});

describe("the fewest beds, stopped", () => {
  test("[K5] wherever it is stopped, no choice leaves fewer short than its bound, and it says so", () => {
    const season = winterSeason(winterFarm(851, 60, 45, false), SEASON);
    const whole = fewestOf(season, solver).fewest;
    let stoppedCount = 0;
    for (const steps of [0, 1, 2, 4, 40, 400]) {
      const asking = provenFewest(season, solver);
      let step = asking.next();
      for (let done = 0; done < steps && !step.done; done++) step = asking.next();
      if (!step.done) step = asking.next(true);
      if (!step.done) throw new RangeError("a stop must end it");
      expect(checkFewest(season, step.value), `${steps} steps`).toEqual([]);
      const { status, boundShortStems, focalShortStems, keptBedIds } = step.value.fewest;
      if (status === "stopped") stoppedCount++;
      expect(boundShortStems).toBeLessThanOrEqual(whole.focalShortStems);
      expect(focalShortStems).toBeGreaterThanOrEqual(whole.focalShortStems);
      if (focalShortStems === whole.focalShortStems)
        expect(keptBedIds.length).toBeGreaterThanOrEqual(whole.keptBedIds.length);
    }
    expect(stoppedCount).toBeGreaterThan(2);
  });
});
