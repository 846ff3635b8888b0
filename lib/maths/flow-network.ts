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

/**
 * Refuses what no network can be.
 * @throws RangeError if an array is too short, a cost is negative, or an arc leads from a node that wants units
 */
export function checkNetwork({ nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork): void {
  if (supply.length < nodeCount || unmetCost.length < nodeCount)
    throw new RangeError(`supply and unmetCost need ${nodeCount} nodes, got ${supply.length} and ${unmetCost.length}`);
  if (from.length < arcCount || to.length < arcCount || cost.length < arcCount)
    throw new RangeError(
      `from, to and cost need ${arcCount} arcs, got ${from.length}, ${to.length} and ${cost.length}`,
    );
  for (let node = 0; node < nodeCount; node++)
    if (unmetCost[node] < 0) throw new RangeError(`unmetCost[${node}] must not be negative, got ${unmetCost[node]}`);
  for (let arc = 0; arc < arcCount; arc++) {
    if (cost[arc] < 0) throw new RangeError(`cost[${arc}] must not be negative, got ${cost[arc]}`);
    if (supply[from[arc]] < 0)
      throw new RangeError(`from[${arc}] must not be a node that wants units, got node ${from[arc]}`);
  }
}
