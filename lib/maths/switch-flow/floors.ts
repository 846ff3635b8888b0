import type { FlowNetwork } from "../flow-network";
import { type FlowPart, PARTS_PER_UNIT } from "./parts";

/**
 * What the prices of one flow say about every selection (as in Benders' decomposition): the part costs at least `constant - Σ slopes × on`, whatever is on. Slopes stand
 * in the order of the part's switches; a switch part on counts in part. Whole numbers.
 */
export type Floor = {
  readonly part: number;
  readonly constant: number;
  readonly slopes: Float64Array;
  /** The nodes of the whole network that it prices, and the prices that it comes from: all others are priced 0. */
  readonly nodes: Int32Array;
  readonly prices: Int32Array;
};

/** What a floor says a part costs at least, at a selection of all switches (0 off, 1 on, or between). */
export function floorCost({ constant, slopes }: Floor, { switches }: FlowPart, selection: ArrayLike<number>): number {
  let cost = constant;
  for (let index = 0; index < slopes.length; index++) cost -= slopes[index] * selection[switches[index]];
  return cost;
}

/** The part's flow at a selection: its cost exact when every switch is on or off, and the floor that its prices give. */
export function floorAt(
  part: FlowPart,
  partIndex: number,
  selection: ArrayLike<number>,
): { cost: number; floor: Floor } {
  const supply = new Int32Array(part.flow.nodeCount);
  const exact = Float64Array.from(part.flow.supply);
  part.switches.forEach((index, place) => {
    const { nodes, units } = part.effects[place];
    for (let at = 0; at < nodes.length; at++) exact[nodes[at]] += units[at] * selection[index];
  });
  for (let node = 0; node < supply.length; node++) supply[node] = Math.round(exact[node] * PARTS_PER_UNIT);
  const { price, totalCost } = part.solve(supply);
  return {
    cost: totalCost / PARTS_PER_UNIT,
    floor: floorOf(part, partIndex, leastPrices(part.flow, price, part.giverCount)),
  };
}

/**
 * Prices that allow no arc a gain bound the cost at every supply, whichever flow they came from: that is why a floor from rounded supplies
 * holds too. `constant` is the bound with every switch off.
 */
function floorOf({ nodes: ownNodes, flow, effects }: FlowPart, part: number, price: Int32Array): Floor {
  let constant = 0;
  for (let node = 0; node < flow.nodeCount; node++) constant -= flow.supply[node] * price[node];
  const slopes = Float64Array.from(effects, ({ nodes, units }) => {
    let slope = 0;
    for (let at = 0; at < nodes.length; at++) slope += units[at] * price[nodes[at]];
    return slope;
  });
  return { part, constant, slopes, nodes: ownNodes, prices: price };
}

/**
 * The lowest prices that passing and giving nodes may have beside those of the wanting ones. Where a node has no units any price in a
 * range is right; the lowest gives the highest bound for the selections in which it has some.
 */
function leastPrices(
  { arcCount, supply, from, to, cost }: FlowNetwork,
  price: Int32Array,
  giverCount: number,
): Int32Array {
  const least = price.map((cost, node) => (node >= giverCount && supply[node] < 0 ? cost : 0));
  for (const isGiving of [false, true])
    for (let arc = 0; arc < arcCount; arc++)
      if (from[arc] < giverCount === isGiving)
        least[from[arc]] = Math.max(least[from[arc]], least[to[arc]] - cost[arc]);
  return least;
}
