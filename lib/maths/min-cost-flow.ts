import { type LaidOutArcs, layOut } from "./arc-layout";
import { FirstTree } from "./first-tree";
import { checkNetwork, checkSupply, type FlowNetwork, type FlowSolution } from "./flow-network";
import { SpanningTree } from "./spanning-tree";

/**
 * Solves a network to optimality by the primal network simplex method.
 *
 * Every giving node may keep its units (an arc to the root, cost 0) and every wanting node may go without (an arc from the root at
 * `unmetCost`), so that a first tree is feasible for nothing; greed makes a better one (`FirstTree`). Those arcs are priced like all others.
 * The entering arc is the best of a block; arcs are laid out with a stride so that each block samples the whole network.
 *
 * Source: Z. Király and P. Kovács, "Efficient implementations of minimum-cost flow algorithms", Acta Universitatis Sapientiae
 * Informatica 4(1), 2012 (block search, strongly feasible trees). Left out: capacities (an arc with a capacity can be written as
 * a node; tests/maths/published-networks.ts does it).
 * @throws RangeError if the network is none, or its numbers are too great (`checkNetwork`)
 */
export function minCostFlow(network: FlowNetwork): FlowSolution {
  checkNetwork(network);
  const arcs = layOut(network);
  const tree = new SpanningTree(new FirstTree(network), arcs);
  const pivotCount = pivotToOptimum(tree, arcs);
  return solutionOf(network, arcs, tree, pivotCount);
}

/**
 * A network solved again and again while its supplies change: each solve starts from the tree of the one before, which is nearly the
 * right one. Costs and arcs stay, and so does which nodes want; the first `giverCount` nodes may give, even where they have nothing now.
 * Every answer is as optimal as a cold one, with the same certificate; prices may differ where several prove the same.
 */
export function flowSolver(network: FlowNetwork, giverCount: number): (supply: Int32Array) => FlowSolution {
  checkNetwork(network, giverCount);
  const arcs = layOut(network, giverCount, network.nodeCount);
  let tree: SpanningTree | null = null;
  return (supply) => {
    checkSupply(network.nodeCount, supply);
    const given = { ...network, supply };
    if (tree) tree.resupply(supply, arcs);
    else tree = new SpanningTree(new FirstTree(given), arcs);
    return solutionOf(given, arcs, tree, pivotToOptimum(tree, arcs));
  };
}

/**
 * Blocks of so many roots of the arc count are searched at a time. Measured on seeded farms of three sizes: small blocks mean more pivots,
 * but a pivot costs less than looking at a hundred arcs.
 */
const BLOCK_SHARE = 0.08;

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
    tree.pivot(entering, best);
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
    const place = tree.arc[node];
    const arc = arcs.arcAt(place);
    totalCost += units * arcs.cost[place];
    if (arc < arcCount) flow[arc] = units;
    else if (network.supply[arc - arcCount] < 0) unmet[arc - arcCount] = units;
  }
  return { flow, unmet, price: tree.price.slice(0, nodeCount), totalCost, pivotCount };
}
