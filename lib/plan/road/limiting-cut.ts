import type { Match } from "./match";

/**
 * The part of the season that limits a short need: every need and supply that could pass it one more stem, however many hands it goes
 * through. Nothing in it could come from outside, so `needStems - supplyStems + freeStems = shortStems` [G3]: those who share the stems
 * ask for more than there is. `freeStems` are stems it would be dearer to shift than to buy in; nearly always 0.
 */
export type LimitingCut = {
  readonly needIndexes: readonly number[];
  readonly needStems: number;
  readonly supplyStems: number;
  readonly freeStems: number;
  readonly shortStems: number;
};

/** The adjacency that the search needs, made once a match. */
export function cutFinder(match: Match): (needIndex: number) => LimitingCut {
  const { network, solution, shortStems, needs } = match;
  const { arcCount, nodeCount, from, to, supply } = network.flow;
  const into = adjacency(nodeCount, arcCount, to);
  const outOf = adjacency(nodeCount, arcCount, from);
  return (needIndex) => {
    const reached = new Uint8Array(nodeCount);
    const queue = [network.firstNeed + needIndex];
    reached[queue[0]] = 1;
    const reach = (node: number) => {
      if (reached[node]) return;
      reached[node] = 1;
      queue.push(node);
    };
    for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
      for (let place = into.start[node]; place < into.start[node + 1]; place++) reach(from[into.arcs[place]]);
      for (let place = outOf.start[node]; place < outOf.start[node + 1]; place++)
        if (solution.flow[outOf.arcs[place]] > 0) reach(to[outOf.arcs[place]]);
    }
    const cut = { needIndexes: [] as number[], needStems: 0, supplyStems: 0, freeStems: 0, shortStems: 0 };
    for (let node = 0; node < network.firstPassage; node++) {
      if (!reached[node]) continue;
      cut.supplyStems += supply[node];
      cut.freeStems += supply[node];
      for (let place = outOf.start[node]; place < outOf.start[node + 1]; place++)
        cut.freeStems -= solution.flow[outOf.arcs[place]];
    }
    for (let index = 0; index < needs.length; index++) {
      if (!reached[network.firstNeed + index]) continue;
      cut.needIndexes.push(index);
      cut.needStems += needs[index].stems;
      cut.shortStems += shortStems[index];
    }
    return cut;
  };
}

function adjacency(nodeCount: number, arcCount: number, end: Int32Array) {
  const start = new Int32Array(nodeCount + 1);
  for (let arc = 0; arc < arcCount; arc++) start[end[arc] + 1]++;
  for (let node = 0; node < nodeCount; node++) start[node + 1] += start[node];
  const arcs = new Int32Array(arcCount);
  const next = start.slice();
  for (let arc = 0; arc < arcCount; arc++) arcs[next[end[arc]]++] = arc;
  return { start, arcs };
}
