import type { FlowNetwork } from "#lib/maths/flow-network";

/**
 * A network in the DIMACS format for minimum-cost flow, balanced: the root comes last, takes what is kept (at no cost) and gives what is gone
 * without (at its price). A line `p min NODES ARCS`, then `n NODE SUPPLY` for each node that gives or wants, then `a FROM TO LEAST MOST COST`
 * for each arc; nodes count from 1. No arc could carry more than all there is, so that is the most of those without a limit.
 * Source: "The First DIMACS International Algorithm Implementation Challenge: Problem definitions and specifications", 1991.
 */
export function toDimacs({ nodeCount, supply, unmetCost, arcCount, from, to, cost }: FlowNetwork): string {
  const root = nodeCount + 1;
  const nodes: string[] = [];
  const arcs: string[] = [];
  let atHand = 0;
  let wanted = 0;
  for (let node = 0; node < nodeCount; node++) {
    if (supply[node] === 0) continue;
    nodes.push(`n ${node + 1} ${supply[node]}`);
    if (supply[node] > 0) {
      atHand += supply[node];
      arcs.push(`a ${node + 1} ${root} 0 ${supply[node]} 0`);
    } else {
      wanted -= supply[node];
      arcs.push(`a ${root} ${node + 1} 0 ${-supply[node]} ${unmetCost[node]}`);
    }
  }
  if (wanted !== atHand) nodes.push(`n ${root} ${wanted - atHand}`);
  const own = Array.from(
    { length: arcCount },
    (_, arc) => `a ${from[arc] + 1} ${to[arc] + 1} 0 ${atHand} ${cost[arc]}`,
  );
  return `${[`p min ${root} ${arcCount + arcs.length}`, ...nodes, ...own, ...arcs].join("\n")}\n`;
}

/** What such a file says, each node and arc once; arcs as from, to, least, most and cost. Throws Error at a line that is none of the format's. */
export function fromDimacs(text: string): {
  readonly nodeCount: number;
  readonly arcCount: number;
  readonly supply: readonly number[];
  readonly arcs: readonly (readonly [from: number, to: number, least: number, most: number, cost: number])[];
} {
  let nodeCount = 0;
  let arcCount = 0;
  let supply: number[] = [];
  const arcs: [number, number, number, number, number][] = [];
  for (const line of text.trimEnd().split("\n")) {
    const [kind, ...words] = line.split(" ");
    const numbers = words.slice(kind === "p" ? 1 : 0).map(Number);
    if (!numbers.every(Number.isInteger)) throw new Error(`not whole numbers: ${line}`);
    if (kind === "p" && words[0] === "min") {
      [nodeCount, arcCount] = numbers;
      supply = Array.from({ length: nodeCount }, () => 0);
    } else if (kind === "n" && numbers.length === 2) supply[numbers[0] - 1] = numbers[1];
    else if (kind === "a" && numbers.length === 5) {
      const [from, to, least, most, cost] = numbers;
      arcs.push([from - 1, to - 1, least, most, cost]);
    } else throw new Error(`no line of the format: ${line}`);
  }
  return { nodeCount, arcCount, supply, arcs };
}
