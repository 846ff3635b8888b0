import type { FlowNetwork } from "#lib/maths/flow-network";
import { NetworkSketch } from "./random-networks";

/** A network whose arcs carry no more than their capacity. Supplies sum to 0: above 0 gives exactly that many, below 0 wants them. */
export type CapacitatedNetwork = {
  readonly supplies: readonly number[];
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly capacity: readonly number[];
  readonly cost: readonly number[];
};

/**
 * A capacitated network as one without capacities, with the same optimum: each arc becomes a node that has its capacity to give, to the arc's
 * head at the arc's cost or back to its tail for nothing. A tail gets back what its arcs do not carry, so a node wants the capacity that
 * leaves it, less its own supply. Source: the textbook change of capacities into nodes, for example R. K. Ahuja,
 * T. L. Magnanti and J. B. Orlin, Network Flows, 1993, section 2.4 (from memory).
 * @param shortCost  of a unit that does not arrive; dearer than any way through
 */
export function withoutCapacities(
  { supplies, from, to, capacity, cost }: CapacitatedNetwork,
  shortCost: number,
): FlowNetwork {
  const sketch = new NetworkSketch();
  const leaving = supplies.map(() => 0);
  from.forEach((tail, arc) => {
    leaving[tail] += capacity[arc];
  });
  supplies.forEach((units, node) => {
    if (leaving[node] < units)
      throw new RangeError(`supplies[${node}] cannot leave: ${units} units, room for ${leaving[node]}`);
    sketch.node(units - leaving[node], shortCost);
  });
  from.forEach((tail, arc) => {
    const between = sketch.node(capacity[arc]);
    sketch.arc(between, to[arc], cost[arc]);
    sketch.arc(between, tail, 0);
  });
  return sketch.network();
}

/**
 * A transportation problem: what each origin has, what each market wants, freight in dollars per case and thousand miles.
 * Source: G. B. Dantzig, Linear Programming and Extensions, Princeton University Press, 1963, section 3.3; also the first model of the
 * GAMS model library. Published.
 */
export const DANTZIG = {
  casesAtOrigins: [350, 600],
  casesForMarkets: [325, 300, 275],
  thousandMiles: [
    [2.5, 1.7, 1.8],
    [2.5, 1.8, 1.4],
  ],
  dollarsPerThousandMiles: 90,
  optimumDollars: 153_675,
} as const;

/** Source: OR-Tools documentation, "Minimum cost flows", first example. Published. */
export const OR_TOOLS_FLOW = {
  supplies: [20, 0, 0, -5, -15],
  from: [0, 0, 1, 1, 1, 2, 2, 3, 4],
  to: [1, 2, 2, 3, 4, 3, 4, 4, 2],
  capacity: [15, 8, 20, 4, 10, 15, 4, 20, 5],
  cost: [4, 4, 2, 2, 6, 1, 3, 2, 3],
  optimum: 150,
} as const;

/** What each of four workers costs at each of four tasks. Source: OR-Tools documentation, "Assignment as a minimum cost flow problem". Published. */
export const OR_TOOLS_ASSIGNMENT = {
  cost: [
    [90, 76, 75, 70],
    [35, 85, 55, 65],
    [125, 95, 90, 105],
    [45, 110, 95, 115],
  ],
  optimum: 265,
} as const;

/** Source: NetworkX documentation, the example of `min_cost_flow_cost`. Published. */
export const NETWORKX_FLOW = {
  supplies: [5, 0, 0, -5],
  from: [0, 0, 1, 2],
  to: [1, 2, 3, 3],
  capacity: [4, 10, 9, 5],
  cost: [3, 6, 1, 2],
  optimum: 24,
} as const;
