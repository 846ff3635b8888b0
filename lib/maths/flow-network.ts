/**
 * A network of nodes and arcs through which whole units flow at least cost. Arcs carry any amount; costs are whole and not negative.
 * `supply[node]` above 0 may give up to that many units, below 0 wants that many and passes none on, 0 passes units on.
 * `unmetCost[node]` is paid for each unit a wanting node goes without, so every network has an answer.
 */
export type FlowNetwork = {
  readonly nodeCount: number;
  readonly supply: Int32Array;
  readonly unmetCost: Int32Array;
  readonly arcCount: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly cost: Int32Array;
};

/**
 * The cheapest flow. `price[node]` proves it: one unit more at the node lowers the total by that much, and no arc could lower it further:
 * `cost + price[from] - price[to] >= 0`, with equality where units flow (see `checkFlow`).
 */
export type FlowSolution = {
  readonly flow: Int32Array;
  readonly unmet: Int32Array;
  readonly price: Int32Array;
  readonly totalCost: number;
  readonly pivotCount: number;
};

/** Prices, flows and what an arc would save are held in 32 bits. */
const MOST_UNITS = 2 ** 31 - 1;
/** What the dearest going without, and the dearest arc at each node, may come to together. */
export const MOST_PRICE = Math.floor(2 ** 31 / 3) - 1;

/**
 * Refuses what no network can be, and what 32 bits cannot hold. A price is the cost of a way to the root: one cost of going without at most, and
 * an arc at each node; two prices and a cost must fit together.
 * @param giverCount  the first so many nodes give, even where they have nothing now
 * @throws RangeError if an array is too short, a cost is negative or costs are too great, an arc leads from a node that wants units, or one that
 * costs nothing leads to a node that gives: units could be kept at either, and no answer would say whose they are
 */
export function checkNetwork(
  { nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork,
  giverCount = 0,
): void {
  if (supply.length < nodeCount || unmetCost.length < nodeCount)
    throw new RangeError(`supply and unmetCost need ${nodeCount} nodes, got ${supply.length} and ${unmetCost.length}`);
  if (from.length < arcCount || to.length < arcCount || cost.length < arcCount)
    throw new RangeError(
      `from, to and cost need ${arcCount} arcs, got ${from.length}, ${to.length} and ${cost.length}`,
    );
  let dearestUnmet = 0;
  let dearestArc = 1;
  for (let node = 0; node < nodeCount; node++) {
    if (unmetCost[node] < 0) throw new RangeError(`unmetCost[${node}] must not be negative, got ${unmetCost[node]}`);
    dearestUnmet = Math.max(dearestUnmet, unmetCost[node]);
  }
  for (let arc = 0; arc < arcCount; arc++) {
    if (cost[arc] < 0) throw new RangeError(`cost[${arc}] must not be negative, got ${cost[arc]}`);
    if (supply[from[arc]] < 0)
      throw new RangeError(`from[${arc}] must not be a node that wants units, got node ${from[arc]}`);
    if (cost[arc] === 0 && (supply[to[arc]] > 0 || to[arc] < giverCount))
      throw new RangeError(`cost[${arc}] must not be 0 on the way to a node that gives, got node ${to[arc]}`);
    dearestArc = Math.max(dearestArc, cost[arc]);
  }
  if (dearestUnmet + nodeCount * dearestArc > MOST_PRICE)
    throw new RangeError(
      `costs must be less: going without costs up to ${dearestUnmet} and an arc up to ${dearestArc}, with ${nodeCount} nodes a price could pass ${MOST_PRICE}`,
    );
  checkSupply(nodeCount, supply);
}

/** @throws RangeError if what is given, or what is wanted, comes to more than 2,147,483,647 units */
export function checkSupply(nodeCount: number, supply: Int32Array): void {
  let given = 0;
  let wanted = 0;
  for (let node = 0; node < nodeCount; node++)
    if (supply[node] > 0) given += supply[node];
    else wanted -= supply[node];
  if (Math.max(given, wanted) > MOST_UNITS)
    throw new RangeError(`supply must come to ${MOST_UNITS} units at most, got ${given} given and ${wanted} wanted`);
}
