import { buckets } from "#lib/maths/buckets";
import type { Match } from "./match";

/**
 * The part of the season that limits a short need: every need and supply that could pass it one more stem, however many hands it goes
 * through. Nothing in it could come from outside, so `needStems - supplyStems + freeStems = shortStems` [G3]: those who share the stems
 * ask for more than there is. `freeStems` are stems it would be dearer to move than to buy in; nearly always 0.
 */
export type Bottleneck = {
  readonly needIndexes: readonly number[];
  readonly needStems: number;
  readonly supplyStems: number;
  readonly freeStems: number;
  readonly shortStems: number;
};

/** The adjacency that the search needs, made once a match. */
export function bottleneckFinder(match: Match): (needIndex: number) => Bottleneck {
  const { network, solution, shortStems, needs } = match;
  const { arcCount, nodeCount, from, to, supply } = network.flow;
  const into = buckets(nodeCount, 0, arcCount, (arc) => to[arc]);
  const outOf = buckets(nodeCount, 0, arcCount, (arc) => from[arc]);
  // A part of a need that is not reached gets nothing, so that counting the need whole adds up as well.
  const nodesOf = (needIndex: number): number[] => {
    const first = network.nodeOfNeed(needIndex);
    return Array.from({ length: network.nodeOfNeed(needIndex + 1) - first }, (_, place) => first + place);
  };
  return (needIndex) => {
    const reached = new Uint8Array(nodeCount);
    const queue: number[] = [];
    const reach = (node: number) => {
      if (reached[node]) return;
      reached[node] = 1;
      queue.push(node);
    };
    for (const node of nodesOf(needIndex)) reach(node);
    for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
      for (let place = into.start[node]; place < into.start[node + 1]; place++) reach(from[into.members[place]]);
      for (let place = outOf.start[node]; place < outOf.start[node + 1]; place++)
        if (solution.flow[outOf.members[place]] > 0) reach(to[outOf.members[place]]);
    }
    const bottleneck = { needIndexes: [] as number[], needStems: 0, supplyStems: 0, freeStems: 0, shortStems: 0 };
    for (let node = 0; node < network.giverCount; node++) {
      if (!reached[node]) continue;
      bottleneck.supplyStems += supply[node];
      bottleneck.freeStems += supply[node];
      for (let place = outOf.start[node]; place < outOf.start[node + 1]; place++)
        bottleneck.freeStems -= solution.flow[outOf.members[place]];
    }
    for (let index = 0; index < needs.length; index++) {
      if (!nodesOf(index).some((node) => reached[node])) continue;
      bottleneck.needIndexes.push(index);
      bottleneck.needStems += needs[index].stems;
      bottleneck.shortStems += shortStems[index];
    }
    return bottleneck;
  };
}
