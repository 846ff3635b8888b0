import { describe, expect, test } from "vitest";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { flowSolver, minCostFlow } from "#lib/maths/min-cost-flow";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { highs } from "../least-cost";
import { flowCostByHighs } from "./flow-by-highs";
import { NetworkSketch, randomNetwork, SHAPES } from "./random-networks";

const solved = (draw: (sketch: NetworkSketch) => void) => {
  const sketch = new NetworkSketch();
  draw(sketch);
  const network = sketch.network();
  const solution = minCostFlow(network);
  expect(checkFlow(network, solution)).toEqual([]);
  return solution;
};

describe("small networks worked by hand", () => {
  test("of two ways to serve 5 units, 3 take the cheap one that has only 3: 3 × 1 + 2 × 4 = 11", () => {
    const solution = solved((sketch) => {
      const [cheap, dear] = [sketch.node(3), sketch.node(9)];
      const wants = sketch.node(-5, 100);
      sketch.arc(cheap, wants, 1);
      sketch.arc(dear, wants, 4);
    });
    expect([...solution.flow]).toEqual([3, 2]);
    expect(solution.totalCost).toBe(11);
  });

  test("the cheap unit goes where its lack would cost most, not where it travels for least", () => {
    const solution = solved((sketch) => {
      const gives = sketch.node(1);
      sketch.arc(gives, sketch.node(-1, 10), 0);
      sketch.arc(gives, sketch.node(-1, 50), 5);
    });
    expect([...solution.flow]).toEqual([0, 1]);
    expect([...solution.unmet]).toEqual([0, 1, 0]);
    expect(solution.totalCost).toBe(5 + 10);
  });

  test("a unit whose way costs more than its lack stays at home", () => {
    const solution = solved((sketch) => sketch.arc(sketch.node(4), sketch.node(-4, 3), 7));
    expect([...solution.flow]).toEqual([0]);
    expect(solution.totalCost).toBe(12);
  });

  test("units pass on through a chain and none is left in it", () => {
    const solution = solved((sketch) => {
      const chain = [sketch.node(6), sketch.node(0), sketch.node(0), sketch.node(-4, 30)];
      for (let place = 0; place < 3; place++) sketch.arc(chain[place], chain[place + 1], place + 1);
    });
    expect([...solution.flow]).toEqual([4, 4, 4]);
    expect(solution.totalCost).toBe(4 * (1 + 2 + 3));
  });

  test("a demand that nothing leads to goes without, at its price", () => {
    const solution = solved((sketch) => {
      sketch.node(5);
      sketch.node(-3, 20);
    });
    expect([...solution.unmet]).toEqual([0, 3]);
    expect(solution.totalCost).toBe(60);
  });

  test("a network without nodes costs nothing", () => {
    expect(solved(() => {}).totalCost).toBe(0);
  });

  test("the price of a node is what one unit more there would save", () => {
    const network = randomNetwork(11, "dense");
    const before = minCostFlow(network);
    for (let node = 0; node < network.nodeCount; node++) {
      if (network.supply[node] <= 0) continue;
      const more = network.supply.slice();
      more[node]++;
      const saved = before.totalCost - minCostFlow({ ...network, supply: more }).totalCost;
      expect(saved).toBeLessThanOrEqual(before.price[node]);
      const fewer = network.supply.slice();
      fewer[node]--;
      const lost = minCostFlow({ ...network, supply: fewer }).totalCost - before.totalCost;
      expect(lost).toBeGreaterThanOrEqual(before.price[node]);
    }
  });
});

describe.each(SHAPES)("random networks, %s", (shape) => {
  test("60 of them carry their certificate and cost what HiGHS finds", async () => {
    const solver = await highs;
    let unmetUnits = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const network = randomNetwork(seed, shape);
      const solution = minCostFlow(network);
      expect(checkFlow(network, solution), `seed ${seed}`).toEqual([]);
      expect(flowCostByHighs(solver, network), `seed ${seed}`).toBeCloseTo(solution.totalCost, 2);
      for (const units of solution.unmet) unmetUnits += units;
    }
    expect(unmetUnits).toBeGreaterThan(0);
  });

  test("solved again with other supplies, from the last tree, they cost what a cold solve does", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const network = randomNetwork(seed, shape);
      const random = seededRandom(seed);
      const solve = flowSolver(network, firstThatMayNotGive(network));
      for (let time = 0; time < 5; time++) {
        const supply = network.supply.map((units) => (units > 0 ? wholeBetween(random, 0, units) : units));
        const warm = solve(supply);
        expect(warm.totalCost, `seed ${seed}, time ${time}`).toBe(minCostFlow({ ...network, supply }).totalCost);
        expect(checkFlow({ ...network, supply }, warm), `seed ${seed}, time ${time}`).toEqual([]);
      }
    }
  });
});

/** Givers stand first in these networks; a giver of 0 units is drawn as a passage. */
function firstThatMayNotGive({ supply, nodeCount }: FlowNetwork): number {
  let count = 0;
  while (count < nodeCount && supply[count] > 0) count++;
  return count;
}

test("what no network can be is refused with its place", () => {
  const network = randomNetwork(1, "dense");
  expect(() => minCostFlow({ ...network, cost: network.cost.map((_, arc) => (arc === 2 ? -1 : 1)) })).toThrow(
    new RangeError("cost[2] must not be negative, got -1"),
  );
  expect(() => minCostFlow({ ...network, supply: network.supply.subarray(1) })).toThrow(RangeError);
  expect(() => minCostFlow({ ...network, to: network.to.subarray(1) })).toThrow(RangeError);
});

test("a wanting node may not pass on: it would be bought for cheaply, again and again, to serve a dearer one", () => {
  const sketch = new NetworkSketch();
  const cheap = sketch.node(-1, 5);
  const dear = sketch.node(-10, 100);
  sketch.arc(cheap, dear, 1);
  expect(() => minCostFlow(sketch.network())).toThrow(
    new RangeError("from[0] must not be a node that wants units, got node 0"),
  );
});

test("a reward for going without is refused", () => {
  const sketch = new NetworkSketch();
  sketch.arc(sketch.node(2), sketch.node(-1, -5), 1);
  expect(() => minCostFlow(sketch.network())).toThrow(new RangeError("unmetCost[1] must not be negative, got -5"));
});

test("costs whose prices could pass 32 bits are refused, where they went round for ever or wrapped to a wrong answer", () => {
  const line = (nodeCount: number, arcCost: number, unmetCost: number) => {
    const sketch = new NetworkSketch();
    const nodes = Array.from({ length: nodeCount }, (_, node) =>
      sketch.node(node === 0 ? 1 : node === nodeCount - 1 ? -1 : 0, node === nodeCount - 1 ? unmetCost : 0),
    );
    for (const node of nodes.slice(1)) sketch.arc(node - 1, node, arcCost);
    return sketch.network();
  };
  expect(() => minCostFlow(line(4, 2 ** 31 - 1, 2 ** 31 - 1))).toThrow(/costs must be less/);
  expect(() => minCostFlow(line(2, 1, 2 ** 31 - 1))).toThrow(/costs must be less/);
  expect(() => minCostFlow(line(5, 2 ** 28, 5))).toThrow(/costs must be less/);
  const greatest = line(3, 100_000_000, 400_000_000);
  expect(checkFlow(greatest, minCostFlow(greatest))).toEqual([]);
  expect(minCostFlow(greatest).totalCost).toBe(200_000_000);
});

test("more units than 32 bits hold are refused", () => {
  const sketch = new NetworkSketch();
  const wants = sketch.node(-5, 9);
  for (const gives of [2 ** 30, 2 ** 30]) sketch.arc(sketch.node(gives), wants, 1);
  const network = sketch.network();
  expect(() => minCostFlow(network)).toThrow(/2147483648 given/);
  const solve = flowSolver({ ...network, supply: Int32Array.of(-5, 3, 3) }, 0);
  expect(() => solve(network.supply)).toThrow(/2147483648 given/);
});

test("a free way into a node that gives is refused: what it brings could be kept there, and the check would reject the answer", () => {
  const sketch = new NetworkSketch();
  const givers = [3, 2, 4, 9].map((units) => sketch.node(units));
  const wants = sketch.node(-5, 14);
  for (const [from, to] of [
    [0, 2],
    [0, 3],
    [1, 0],
    [1, 2],
    [1, 3],
    [2, 0],
    [2, 3],
  ])
    sketch.arc(givers[from], givers[to], 0);
  for (const [giver, cost] of [
    [1, 4],
    [2, 0],
    [3, 4],
  ])
    sketch.arc(givers[giver], wants, cost);
  expect(() => minCostFlow(sketch.network())).toThrow(
    new RangeError("cost[0] must not be 0 on the way to a node that gives, got node 2"),
  );
});
