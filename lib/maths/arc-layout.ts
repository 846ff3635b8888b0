import type { FlowNetwork } from "./flow-network";

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

/** A node that only passes on may not keep a unit: any cost above 0 says so, since the giver would have kept it for nothing. */
const COST_OF_KEEPING_IN_PASSING = 1;

/** Neighbours in the order of search lie this share of all arcs apart, so that each block samples the whole network; measured on seeded farms of three sizes. */
const STRIDE_SHARE = 0.07;

/** Node `nodeCount` is the root; arc `arcCount + node` is the node's root arc. */
export function layOut(
  { nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork,
  giverCount = 0,
): LaidOutArcs {
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

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));
