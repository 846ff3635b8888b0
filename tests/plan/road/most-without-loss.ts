import type { Match } from "#lib/plan/road/match";

/**
 * The most stems that one need of a match could have if every other need kept what `kept` says: the largest flow in the match's own network, costs
 * left aside, by shortest augmenting paths (Edmonds and Karp 1972, "Theoretical improvements in algorithmic efficiency for network flow problems").
 * Slow, and for small farms only.
 */
export function mostWithoutLoss(
  { needs, network }: Pick<Match, "needs" | "network">,
  needIndex: number,
  kept: (needIndex: number) => number,
): number {
  const { flow, giverCount } = network;
  const [source, sink] = [flow.nodeCount, flow.nodeCount + 1];
  const room = new Map<number, Map<number, number>>();
  const add = (from: number, to: number, stems: number) => {
    const row = room.get(from) ?? new Map<number, number>();
    room.set(from, row.set(to, (row.get(to) ?? 0) + stems));
  };
  for (let node = 0; node < giverCount; node++) add(source, node, flow.supply[node]);
  for (let arc = 0; arc < flow.arcCount; arc++) add(flow.from[arc], flow.to[arc], Number.MAX_SAFE_INTEGER);
  let others = 0;
  needs.forEach((need, index) => {
    const most = index === needIndex ? need.stems : kept(index);
    add(network.nodeOfNeed(index), sink, most);
    if (index !== needIndex) others += most;
  });
  return largestFlow(room, add, source, sink) - others;
}

function largestFlow(
  room: ReadonlyMap<number, ReadonlyMap<number, number>>,
  add: (from: number, to: number, stems: number) => void,
  source: number,
  sink: number,
): number {
  for (let total = 0; ; ) {
    const cameFrom = new Map([[source, source]]);
    const queue = [source];
    for (let place = 0; place < queue.length && !cameFrom.has(sink); place++)
      for (const [to, stems] of room.get(queue[place]) ?? [])
        if (stems > 0 && !cameFrom.has(to)) {
          cameFrom.set(to, queue[place]);
          queue.push(to);
        }
    if (!cameFrom.has(sink)) return total;
    const path: [number, number][] = [];
    for (let node = sink; node !== source; node = cameFrom.get(node) ?? source)
      path.push([cameFrom.get(node) ?? source, node]);
    const stems = Math.min(...path.map(([from, to]) => room.get(from)?.get(to) ?? 0));
    for (const [from, to] of path) {
      add(from, to, -stems);
      add(to, from, stems);
    }
    total += stems;
  }
}
