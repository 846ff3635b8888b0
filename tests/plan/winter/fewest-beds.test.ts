import { beforeAll, describe, expect, test } from "vitest";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { loadMixedIntegerSolver, type MixedIntegerSolver } from "#lib/maths/mixed-integer";
import { finished } from "#lib/plan/winter/choose-beds";
import { fewestBeds } from "#lib/plan/winter/fewest-beds";
import { type WinterSeason, winterSeason } from "#lib/plan/winter/season";
import { allowedChoices, SEASON, winterFarm } from "./farm";
import { fewestFaults } from "./proven-questions";

let solver: MixedIntegerSolver;
beforeAll(async () => {
  solver = await loadMixedIntegerSolver();
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
      const fewest = finished(fewestBeds(season, solver));
      if (choices.length === 0) {
        expect(fewest.status).toBe("infeasible");
        continue;
      }
      const tried = choices.map((isKept) => ({ short: focalShort(season, isKept), count: countOf(isKept) }));
      const [best] = tried.sort((a, b) => a.short - b.short || a.count - b.count);
      expect(fewest.status, `seed ${seed}`).toBe("optimal");
      expect([fewest.focalShortStems, fewest.keptBedIds.length], `seed ${seed}`).toEqual([best.short, best.count]);
      expect(fewest.boundShortStems).toBe(best.short);
      expect(fewestFaults(season, solver, fewest), `seed ${seed}`).toEqual([]);
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
  test("[K5] on 4 farms of about 30 beds two certificates prove the stems and the count; one bed fewer, or a stem, is found out", () => {
    for (let seed = 851; seed <= 854; seed++) {
      const season = winterSeason(winterFarm(seed, 60, 45, false), SEASON);
      const fewest = finished(fewestBeds(season, solver));
      expect(fewestFaults(season, solver, fewest), `seed ${seed}`).toEqual([]);
      const { keptBedIds, focalShortStems } = fewest;
      expect(keptBedIds.length, `seed ${seed}`).toBeGreaterThan(0);
      expect(fewestFaults(season, solver, { ...fewest, keptBedIds: keptBedIds.slice(1) })).not.toEqual([]);
      expect(fewestFaults(season, solver, { ...fewest, focalShortStems: focalShortStems + 1 })).not.toEqual([]);
    }
  });
});

describe("the fewest beds, stopped", () => {
  test("[K5] wherever it is stopped, no choice leaves fewer short than its bound, and it says so", () => {
    const season = winterSeason(winterFarm(851, 60, 45, false), SEASON);
    const whole = finished(fewestBeds(season, solver));
    let stoppedCount = 0;
    for (const steps of [0, 1, 2, 4]) {
      const asking = fewestBeds(season, solver);
      let step = asking.next();
      for (let done = 0; done < steps && !step.done; done++) step = asking.next();
      if (!step.done) step = asking.next(true);
      if (!step.done) throw new RangeError("a stop must end it");
      const { status, boundShortStems, focalShortStems, keptBedIds } = step.value;
      if (status === "stopped") stoppedCount++;
      expect(boundShortStems).toBeLessThanOrEqual(whole.focalShortStems);
      expect(focalShortStems).toBeGreaterThanOrEqual(whole.focalShortStems);
      if (focalShortStems === whole.focalShortStems)
        expect(keptBedIds.length).toBeGreaterThanOrEqual(whole.keptBedIds.length);
    }
    expect(stoppedCount).toBeGreaterThan(0);
  });
});
