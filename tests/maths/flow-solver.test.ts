import { expect, test } from "vitest";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { flowSolver, minCostFlow } from "#lib/maths/min-cost-flow";
import { oneOf, seededRandom, wholeBetween } from "#lib/maths/random";

/** Givers, then nodes that pass on, then nodes that want; arcs at random from each run to the next. */
function layered(seed: number): { network: FlowNetwork; giverCount: number; random: () => number } {
  const random = seededRandom(seed);
  const giverCount = wholeBetween(random, 1, 12);
  const passingCount = wholeBetween(random, 1, 10);
  const wantingCount = wholeBetween(random, 1, 10);
  const nodeCount = giverCount + passingCount + wantingCount;
  const arcs: [number, number, number][] = [];
  for (let node = 0; node < giverCount + passingCount; node++)
    for (let arc = wholeBetween(random, 0, 4); arc > 0; arc--) {
      const isGiver = node < giverCount;
      const first = isGiver ? giverCount : giverCount + passingCount;
      const to = first + wholeBetween(random, 0, (isGiver ? passingCount : wantingCount) - 1);
      arcs.push([node, to, wholeBetween(random, 0, 20)]);
    }
  const supply = Int32Array.from({ length: nodeCount }, (_, node) =>
    node < giverCount ? wholeBetween(random, 0, 9) : node < giverCount + passingCount ? 0 : -wholeBetween(random, 1, 9),
  );
  const network = {
    nodeCount,
    supply,
    unmetCost: Int32Array.from(supply, (units) => (units < 0 ? wholeBetween(random, 1, 60) : 0)),
    arcCount: arcs.length,
    from: Int32Array.from(arcs, ([from]) => from),
    to: Int32Array.from(arcs, ([, to]) => to),
    cost: Int32Array.from(arcs, ([, , cost]) => cost),
  };
  return { network, giverCount, random };
}

test("a network solved again after its supplies change is as optimal as one solved cold: 400 networks, 12 changes each", () => {
  for (let seed = 1; seed <= 400; seed++) {
    const { network, giverCount, random } = layered(seed);
    const solve = flowSolver(network, giverCount);
    const supply = network.supply.slice();
    for (let change = 0; change < 12; change++) {
      const warm = solve(supply);
      expect(checkFlow({ ...network, supply }, warm), `seed ${seed}, change ${change}`).toEqual([]);
      expect(warm.totalCost).toBe(minCostFlow({ ...network, supply }).totalCost);
      for (let node = 0; node < giverCount; node++) if (random() < 0.4) supply[node] = oneOf(random, [0, 0, 1, 5, 30]);
    }
  }
});

test("units are never kept in passing, however many givers have nothing: 400 networks, each proven", () => {
  for (let seed = 1; seed <= 400; seed++) {
    const { network, random } = layered(seed);
    const supply = network.supply.map((units) => (units > 0 ? oneOf(random, [0, 0, 1, 5, 30]) : units));
    expect(checkFlow({ ...network, supply }, minCostFlow({ ...network, supply })), `seed ${seed}`).toEqual([]);
  }
});

test("a network that once kept a unit in passing, which cost 22 instead of 21: prices of the first tree must agree with its arcs", () => {
  const network: FlowNetwork = {
    nodeCount: 7,
    supply: Int32Array.of(1, 5, 30, 1, 0, 0, -3),
    unmetCost: Int32Array.of(0, 0, 0, 0, 0, 0, 58),
    arcCount: 14,
    from: Int32Array.of(0, 0, 0, 1, 1, 1, 1, 3, 3, 4, 5, 5, 5, 5),
    to: Int32Array.of(4, 5, 4, 4, 5, 5, 4, 4, 5, 6, 6, 6, 6, 6),
    cost: Int32Array.of(14, 15, 19, 9, 4, 18, 0, 0, 10, 13, 3, 18, 5, 19),
  };
  const solution = minCostFlow(network);
  expect(checkFlow(network, solution)).toEqual([]);
  expect(solution.totalCost).toBe(21);
});
