import { describe, expect, test } from "vitest";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowSolution } from "#lib/maths/flow-network";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { oneOf, type RandomSource, seededRandom } from "#lib/maths/random";
import { randomNetwork } from "./random-networks";

type Part = "flow" | "unmet" | "price";

/** The solution with one number of one part moved up or down by one. */
function corrupted(solution: FlowSolution, part: Part, places: readonly number[], random: RandomSource): FlowSolution {
  const changed = solution[part].slice();
  changed[oneOf(random, places)] += oneOf(random, [-1, 1]);
  return { ...solution, [part]: changed };
}

const places = (count: number): number[] => Array.from({ length: count }, (_, place) => place);

describe("the certificate of a flow catches one number that was changed", () => {
  test.each(["flow", "unmet"] as const)("in %s, wherever it stands, in 200 networks", (part) => {
    for (let seed = 1; seed <= 200; seed++) {
      const network = randomNetwork(seed, "dense");
      const solution = minCostFlow(network);
      const bad = corrupted(solution, part, places(solution[part].length), seededRandom(seed));
      expect(checkFlow(network, bad), `seed ${seed}`).not.toEqual([]);
    }
  });

  test("in the price of any node that gives or wants, in 200 networks", () => {
    for (let seed = 1; seed <= 200; seed++) {
      const network = randomNetwork(seed, "dense");
      const solution = minCostFlow(network);
      const priced = places(network.nodeCount).filter((node) => network.supply[node] !== 0);
      const bad = corrupted(solution, "price", priced, seededRandom(seed));
      expect(checkFlow(network, bad), `seed ${seed}`).not.toEqual([]);
    }
  });

  test("in the total cost", () => {
    const network = randomNetwork(3, "sparse");
    const solution = minCostFlow(network);
    expect(checkFlow(network, { ...solution, totalCost: solution.totalCost - 1 })).toHaveLength(1);
  });
});

test("a flow that serves everyone but too dearly has no certificate, whatever prices come with it", () => {
  const network = {
    nodeCount: 3,
    supply: Int32Array.of(1, 1, -1),
    unmetCost: Int32Array.of(0, 0, 9),
    arcCount: 2,
    from: Int32Array.of(0, 1),
    to: Int32Array.of(2, 2),
    cost: Int32Array.of(1, 2),
  };
  const dear = { flow: Int32Array.of(0, 1), unmet: new Int32Array(3), totalCost: 2, pivotCount: 0 };
  for (let first = -1; first <= 3; first++)
    for (let second = -1; second <= 3; second++)
      for (let wants = -1; wants <= 10; wants++)
        expect(checkFlow(network, { ...dear, price: Int32Array.of(first, second, wants) })).not.toEqual([]);
  expect(checkFlow(network, minCostFlow(network))).toEqual([]);
});
