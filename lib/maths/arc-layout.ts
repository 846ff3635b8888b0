import type { FlowNetwork } from "./flow-network";

/**
 * Arcs in the order in which they are searched: the network's own and one root arc a node. From `count` on there may be a spare a node, never
 * searched: it ties a branch to the root that new supplies have cut off, dearer than going without.
 */
export type LaidOutArcs = {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly cost: Int32Array;
  /** The place of an arc: of the network's own by their index, of a node's root arc by `arcCount + node`. */
  readonly placeOf: (arc: number) => number;
  /** The arc at a place. */
  readonly arcAt: (place: number) => number;
};

/**
 * A node that only passes on may not keep a unit: any cost above 0 says so, since the giver would have kept it for nothing. Its root arc is there for
 * a tree to stand on; it has nothing to gain by entering one, and the search is told so by two ends at the root.
 */
const COST_OF_KEEPING_IN_PASSING = 1;

/**
 * Arcs stay together in runs of four, which reads memory in order, and the runs are laid out so that neighbours lie this share of all apart: each
 * block that is searched samples the whole network. Measured on seeded farms of three sizes.
 */
const RUN_BITS = 2;
const STRIDE_SHARE = 0.07;

/** Node `nodeCount` is the root; arc `arcCount + node` is the node's root arc. What is over beside whole runs comes last. */
export function layOut(
  { nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork,
  giverCount = 0,
  spareCount = 0,
): LaidOutArcs {
  const count = arcCount + nodeCount;
  const runLength = 1 << RUN_BITS;
  const runCount = count >> RUN_BITS;
  const runAt = new Int32Array(runCount);
  const placeOfRun = new Int32Array(runCount);
  const laidFrom = new Int32Array(count + spareCount);
  const laidTo = new Int32Array(count + spareCount);
  const laidCost = new Int32Array(count + spareCount);
  if (spareCount > 0) laidCost.fill(dearest(unmetCost) + 1, count);
  const lay = (firstPlace: number, firstArc: number, length: number) => {
    for (let place = firstPlace, arc = firstArc; place < firstPlace + length; place++, arc++)
      if (arc < arcCount) {
        laidFrom[place] = from[arc];
        laidTo[place] = to[arc];
        laidCost[place] = cost[arc];
      } else {
        const node = arc - arcCount;
        const wants = supply[node] < 0;
        const gives = supply[node] > 0 || node < giverCount;
        laidFrom[place] = gives ? node : nodeCount;
        laidTo[place] = wants ? node : nodeCount;
        laidCost[place] = wants ? unmetCost[node] : gives ? 0 : COST_OF_KEEPING_IN_PASSING;
      }
  };
  let stride = Math.max(1, Math.round(runCount * STRIDE_SHARE));
  while (greatestCommonDivisor(stride, runCount) > 1) stride++;
  for (let place = 0, run = 0; place < runCount; place++) {
    runAt[place] = run;
    placeOfRun[run] = place;
    lay(place * runLength, run * runLength, runLength);
    run += stride;
    if (run >= runCount) run -= runCount;
  }
  const inRuns = runCount * runLength;
  lay(inRuns, inRuns, count - inRuns);
  const moved = (runs: Int32Array) => (index: number) =>
    index < inRuns ? (runs[index >> RUN_BITS] << RUN_BITS) + (index & (runLength - 1)) : index;
  return { count, from: laidFrom, to: laidTo, cost: laidCost, placeOf: moved(placeOfRun), arcAt: moved(runAt) };
}

const dearest = (costs: Int32Array): number => costs.reduce((most, cost) => Math.max(most, cost), 0);

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));
