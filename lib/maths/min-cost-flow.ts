import { SpanningTree } from "./spanning-tree";

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

/** A node that only passes on may not keep a unit: any cost above 0 says so, since the giver would have kept it for nothing. */
const COST_OF_KEEPING_IN_PASSING = 1;

/**
 * Solves a network to optimality by the primal network simplex method.
 *
 * Every giving node may keep its units (an arc to the root, cost 0) and every wanting node may go without (an arc from the root at
 * `unmetCost`): those arcs are the first tree, feasible for nothing. They are priced like all others. The entering arc is the best
 * of a block; arcs are laid out with a stride so that each block samples the whole network.
 *
 * Source: Z. Király and P. Kovács, "Efficient implementations of minimum-cost flow algorithms", Acta Universitatis Sapientiae
 * Informatica 4(1), 2012 (block search, strongly feasible trees). Left out: capacities (an arc with a capacity can be written as
 * a node; tests/maths/published-networks.ts does it).
 * @throws RangeError if an array is too short, a cost is negative, or an arc leads from a node that wants units
 */
export function minCostFlow(network: FlowNetwork): FlowSolution {
  check(network);
  const arcs = layOut(network);
  const tree = new SpanningTree(network.nodeCount, network.supply, network.unmetCost, arcs);
  const pivotCount = pivotToOptimum(tree, arcs);
  return solutionOf(network, arcs, tree, pivotCount);
}

/**
 * A network solved again and again while its supplies change: each solve starts from the tree of the one before, which is nearly the
 * right one. Costs and arcs stay, and so does which nodes want; the first `giverCount` nodes may give, even where they have nothing now.
 * Every answer is as optimal as a cold one, with the same certificate; prices may differ where several prove the same.
 */
export function flowSolver(network: FlowNetwork, giverCount: number): (supply: Int32Array) => FlowSolution {
  check(network);
  const arcs = layOut(network, giverCount);
  let tree: SpanningTree | null = null;
  return (supply) => {
    const given = { ...network, supply };
    if (tree) tree.resupply(supply, arcs);
    else tree = new SpanningTree(network.nodeCount, supply, network.unmetCost, arcs);
    return solutionOf(given, arcs, tree, pivotToOptimum(tree, arcs));
  };
}

/**
 * Arcs in the order in which they are searched: the network's own and one root arc a node. `original[i]` is its place before. From
 * `count` on there is a spare a node, never searched: it ties a branch to the root that new supplies have cut off, at `spareCost`.
 */
export type LaidOutArcs = {
  readonly count: number;
  readonly spareCost: number;
  readonly original: Int32Array;
  readonly position: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly cost: Int32Array;
};

function check({ nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork): void {
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

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/**
 * How the arcs are searched: blocks of so many roots of the arc count, laid out so that neighbours in a block lie so far apart. Both were
 * measured on seeded farms of three sizes: small blocks mean more pivots, but a pivot costs less than looking at a hundred arcs.
 */
const BLOCK_SHARE = 0.08;
const STRIDE_SHARE = 0.07;

/** Node `nodeCount` is the root; arc `arcCount + node` is the node's root arc. */
function layOut({ nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork, giverCount = 0): LaidOutArcs {
  const count = arcCount + nodeCount;
  const spareCost = 1 + unmetCost.reduce((most, cents) => Math.max(most, cents), 0);
  const laid = {
    count,
    spareCost,
    original: new Int32Array(count),
    position: new Int32Array(count),
    from: new Int32Array(count + nodeCount),
    to: new Int32Array(count + nodeCount),
    cost: new Int32Array(count + nodeCount).fill(spareCost, count),
  };
  let stride = Math.max(1, Math.round(count * STRIDE_SHARE));
  while (greatestCommonDivisor(stride, count) > 1) stride++;
  for (
    let place = 0, arc = 0;
    place < count;
    place++, arc = arc + stride < count ? arc + stride : arc + stride - count
  ) {
    laid.original[place] = arc;
    laid.position[arc] = place;
    if (arc < arcCount) {
      laid.from[place] = from[arc];
      laid.to[place] = to[arc];
      laid.cost[place] = cost[arc];
    } else {
      const node = arc - arcCount;
      const wants = supply[node] < 0;
      laid.from[place] = wants ? nodeCount : node;
      laid.to[place] = wants ? node : nodeCount;
      laid.cost[place] = wants
        ? unmetCost[node]
        : supply[node] > 0 || node < giverCount
          ? 0
          : COST_OF_KEEPING_IN_PASSING;
    }
  }
  return laid;
}

function pivotToOptimum(tree: SpanningTree, { count, from, to, cost }: LaidOutArcs): number {
  const price = tree.price;
  const blockSize = Math.min(count, Math.max(8, Math.ceil(Math.sqrt(count) * BLOCK_SHARE)));
  let pivotCount = 0;
  let next = 0;
  for (;;) {
    let best = 0;
    let entering = -1;
    let searched = 0;
    while (searched < count && entering < 0) {
      const end = Math.min(next + blockSize, count);
      for (let arc = next; arc < end; arc++) {
        const reducedCost = cost[arc] + price[from[arc]] - price[to[arc]];
        if (reducedCost < best) {
          best = reducedCost;
          entering = arc;
        }
      }
      searched += end - next;
      next = end === count ? 0 : end;
    }
    if (entering < 0) return pivotCount;
    tree.pivot(entering);
    pivotCount++;
  }
}

function solutionOf(network: FlowNetwork, arcs: LaidOutArcs, tree: SpanningTree, pivotCount: number): FlowSolution {
  const { nodeCount, arcCount } = network;
  const flow = new Int32Array(arcCount);
  const unmet = new Int32Array(nodeCount);
  let totalCost = 0;
  for (let node = 0; node < nodeCount; node++) {
    const units = tree.flow[node];
    if (units === 0) continue;
    const arc = arcs.original[tree.arc[node]];
    totalCost += units * arcs.cost[tree.arc[node]];
    if (arc < arcCount) flow[arc] = units;
    else if (network.supply[arc - arcCount] < 0) unmet[arc - arcCount] = units;
  }
  return { flow, unmet, price: tree.price.slice(0, nodeCount), totalCost, pivotCount };
}
