import { type FlowNetwork, type FlowSolution, MOST_PRICE } from "#lib/maths/flow-network";

/**
 * A match's network with a last level of cost, below the cents: of two matches that cost the same, the one that leaves earlier needs
 * less short is cheaper [M7]. `scale` levels make a cent.
 *
 * This makes the stems short of every need the only ones, from whatever tree a solve starts and whatever else is in the network: two cheapest
 * flows differ by rounds of stems that each swap the shortness of two needs at most, and such a swap is never free. Measured on seeded farms
 * of three sizes: 1 to 3 % more pivots.
 *
 * Where some givers' units are to be used before others' [T2], half a level more tells them apart: every arc from another giver costs one more. A round of stems
 * begins and ends at two givers at most, so it gains or loses one of these, and never outweighs a level above.
 */
export type RankedFlow = { readonly flow: FlowNetwork; readonly scale: number };

/** @param firstNeed  the first of the nodes that want, which stand last, the earliest need first */
export function ranked(flow: FlowNetwork, firstNeed: number, usedFirst: UsedFirst = null): RankedFlow {
  const { nodeCount, arcCount } = flow;
  const needCount = nodeCount - firstNeed;
  // A farm of many thousand needs has no room for a level of each: neighbours then share one, and may tie.
  const half = usedFirst ? 2 : 1;
  // An arc on each step of a price may cost one more for being used later.
  const moreForLater = usedFirst ? nodeCount : 0;
  const room = Math.floor((MOST_PRICE - moreForLater) / (half * (1 + dearestPrice(flow))));
  const levels = Math.max(1, Math.min(needCount + 1, room));
  const scale = levels * half;
  const cost = new Int32Array(arcCount);
  for (let arc = 0; arc < arcCount; arc++) cost[arc] = flow.cost[arc] * scale + laterBy(usedFirst, flow.from[arc]);
  const unmetCost = new Int32Array(nodeCount);
  for (let need = 0; need < needCount; need++)
    unmetCost[firstNeed + need] =
      flow.unmetCost[firstNeed + need] * scale + half * Math.floor(((needCount - need) * (levels - 1)) / needCount);
  return { flow: { ...flow, cost, unmetCost }, scale };
}

/** Of each giver, 1 where its units are used first; null where none are. Givers stand before all other nodes. */
export type UsedFirst = Uint8Array | null;

/** What the arcs from a node cost more for being used later. */
const laterBy = (usedFirst: UsedFirst, node: number): number =>
  usedFirst && node < usedFirst.length ? 1 - usedFirst[node] : 0;

/** What a price can come to, as `checkNetwork` reckons it. */
function dearestPrice({ nodeCount, arcCount, cost, unmetCost }: FlowNetwork): number {
  let dearestUnmet = 0;
  let dearestArc = 1;
  for (let node = 0; node < nodeCount; node++) dearestUnmet = Math.max(dearestUnmet, unmetCost[node]);
  for (let arc = 0; arc < arcCount; arc++) dearestArc = Math.max(dearestArc, cost[arc]);
  return dearestUnmet + nodeCount * dearestArc;
}

/**
 * A ranked solution told in cents: the same flow, with prices rounded down, which prove it as well. Rounding keeps `price[to] <= cost + price[from]`
 * and every equality, since costs in cents are whole; what a giver's arcs cost for being used later is its price's.
 */
export function inCents(
  { flow, unmet, price, pivotCount }: FlowSolution,
  cents: FlowNetwork,
  scale: number,
  usedFirst: UsedFirst = null,
): FlowSolution {
  let totalCost = 0;
  for (let arc = 0; arc < cents.arcCount; arc++) totalCost += flow[arc] * cents.cost[arc];
  for (let node = 0; node < cents.nodeCount; node++) totalCost += unmet[node] * cents.unmetCost[node];
  return {
    flow,
    unmet,
    price: price.map((levels, node) => Math.floor((levels + laterBy(usedFirst, node)) / scale)),
    totalCost,
    pivotCount,
  };
}
