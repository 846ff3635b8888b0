import { expect, test } from "vitest";
import { checkFlow } from "#lib/maths/check-flow";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { highs, LinearProgramme } from "../least-cost";
import { type CapacitatedNetwork, withoutCapacities } from "./published-networks";

const SHORT_COST = 10_000;

/** A capacitated network in which the first node has a way to the last: some units are short all the same. */
function randomCapacitated(seed: number): CapacitatedNetwork {
  const random = seededRandom(seed);
  const nodeCount = wholeBetween(random, 3, 7);
  const arcs: { from: number; to: number; capacity: number; cost: number }[] = [];
  const arc = (from: number, to: number, most: number) =>
    arcs.push({ from, to, capacity: wholeBetween(random, 1, most), cost: wholeBetween(random, 0, 20) });
  for (let node = 0; node + 1 < nodeCount; node++) arc(node, node + 1, 8);
  for (let count = 0; count < nodeCount * 2; count++)
    arc(wholeBetween(random, 0, nodeCount - 1), wholeBetween(random, 0, nodeCount - 1), 6);
  const proper = arcs.filter(({ from, to }) => from !== to);
  const leaves = proper.reduce((sum, { from, capacity }) => sum + (from === 0 ? capacity : 0), 0);
  const supplies = Array.from({ length: nodeCount }, (_, node) =>
    node === 0 ? leaves : node === nodeCount - 1 ? -leaves : 0,
  );
  return {
    supplies,
    from: proper.map(({ from }) => from),
    to: proper.map(({ to }) => to),
    capacity: proper.map(({ capacity }) => capacity),
    cost: proper.map(({ cost }) => cost),
  };
}

test("100 random networks with capacities cost the same without them as HiGHS finds with them", async () => {
  const solver = await highs;
  for (let seed = 1; seed <= 100; seed++) {
    const given = randomCapacitated(seed);
    const network = withoutCapacities(given, SHORT_COST);
    const solution = minCostFlow(network);
    expect(checkFlow(network, solution), `seed ${seed}`).toEqual([]);
    const programme = new LinearProgramme();
    for (const units of given.supplies) programme.put(programme.row(units, units), programme.column(SHORT_COST), -1);
    given.from.forEach((from, arc) => {
      const column = programme.column(given.cost[arc], given.capacity[arc]);
      programme.put(from, column, 1);
      programme.put(given.to[arc], column, -1);
    });
    const keptAtSource = programme.column(0);
    programme.put(0, keptAtSource, 1);
    expect(programme.leastCost(solver), `seed ${seed}`).toBeCloseTo(solution.totalCost, 2);
  }
});

test("one arc of capacity 4 at cost 3 brings 4 of 6 wanted units: 4 × 3, and 2 short", () => {
  const solution = minCostFlow(
    withoutCapacities({ supplies: [4, -6], from: [0], to: [1], capacity: [4], cost: [3] }, SHORT_COST),
  );
  expect(solution.totalCost).toBe(4 * 3 + 2 * SHORT_COST);
});

test("a supply that its arcs have no room for is refused", () => {
  expect(() =>
    withoutCapacities({ supplies: [5, -5], from: [0], to: [1], capacity: [4], cost: [3] }, SHORT_COST),
  ).toThrow(new RangeError("supplies[0] cannot leave: 5 units, room for 4"));
});
