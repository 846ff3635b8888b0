import type { FlowNetwork, FlowSolution } from "../flow-network";
import { flowSolver } from "../min-cost-flow";
import type { SwitchProblem } from "./problem";

/**
 * A part of the network that hangs together, with the switches that reach into it. What the flow costs is the sum over the parts, and a
 * part without a switch costs the same whatever is chosen.
 */
export type FlowPart = {
  /** Its nodes in the whole network; below, nodes are places in this list. */
  readonly nodes: Int32Array;
  readonly flow: FlowNetwork;
  readonly giverCount: number;
  /** Indexes of the switches that reach into it, ascending. */
  readonly switches: Int32Array;
  /** For each of those, the part's nodes it changes and by how much. */
  readonly effects: readonly { readonly nodes: Int32Array; readonly units: Int32Array }[];
  readonly solve: (supply: Int32Array) => FlowSolution;
};

/** Supplies and wants are counted in parts of a unit, so that a switch can be part on: flows stay whole. */
export const PARTS_PER_UNIT = 64;

/** Takes a problem's network apart; what has neither an arc nor a want costs nothing and is left out. */
export function flowParts(problem: SwitchProblem): FlowPart[] {
  const { flow, giverCount } = problem;
  const memberOf = components(flow);
  const partCount = memberOf.reduce((most, part) => Math.max(most, part + 1), 0);
  const placeOf = new Int32Array(flow.nodeCount);
  const nodes: number[][] = Array.from({ length: partCount }, () => []);
  const arcs: number[][] = Array.from({ length: partCount }, () => []);
  for (let node = 0; node < flow.nodeCount; node++) placeOf[node] = nodes[memberOf[node]].push(node) - 1;
  for (let arc = 0; arc < flow.arcCount; arc++) arcs[memberOf[flow.from[arc]]].push(arc);
  const reach = switchReach(problem, memberOf, placeOf, partCount);
  const parts: FlowPart[] = [];
  for (let part = 0; part < partCount; part++) {
    if (arcs[part].length === 0 && !nodes[part].some((node) => flow.supply[node] < 0)) continue;
    const own = subNetwork(flow, nodes[part], arcs[part], placeOf);
    const scaled = { ...own, supply: own.supply.map((units) => units * PARTS_PER_UNIT) };
    const givers = nodes[part].filter((node) => node < giverCount).length;
    parts.push({
      nodes: Int32Array.from(nodes[part]),
      flow: own,
      giverCount: givers,
      switches: Int32Array.from(reach[part], ({ index }) => index),
      effects: reach[part].map((effect) => ({
        nodes: Int32Array.from(effect.nodes),
        units: Int32Array.from(effect.units),
      })),
      solve: flowSolver(scaled, givers),
    });
  }
  return parts;
}

/** The part of each node, numbered from 0 in order of its first node. */
export function components({ nodeCount, arcCount, from, to }: FlowNetwork): Int32Array {
  const leader = Int32Array.from({ length: nodeCount }, (_, node) => node);
  const find = (node: number): number => {
    let at = node;
    while (leader[at] !== at) {
      leader[at] = leader[leader[at]];
      at = leader[at];
    }
    return at;
  };
  for (let arc = 0; arc < arcCount; arc++) leader[find(from[arc])] = find(to[arc]);
  const numbers = new Map<number, number>();
  return Int32Array.from({ length: nodeCount }, (_, node) => {
    const found = find(node);
    const number = numbers.get(found) ?? numbers.size;
    numbers.set(found, number);
    return number;
  });
}

function subNetwork(
  flow: FlowNetwork,
  nodes: readonly number[],
  arcs: readonly number[],
  placeOf: Int32Array,
): FlowNetwork {
  return {
    nodeCount: nodes.length,
    supply: Int32Array.from(nodes, (node) => flow.supply[node]),
    unmetCost: Int32Array.from(nodes, (node) => flow.unmetCost[node]),
    arcCount: arcs.length,
    from: Int32Array.from(arcs, (arc) => placeOf[flow.from[arc]]),
    to: Int32Array.from(arcs, (arc) => placeOf[flow.to[arc]]),
    cost: Int32Array.from(arcs, (arc) => flow.cost[arc]),
  };
}

/** For each part, the switches that can be turned and reach into it, with the part's own nodes. */
function switchReach({ effects }: SwitchProblem, memberOf: Int32Array, placeOf: Int32Array, partCount: number) {
  const reach = Array.from({ length: partCount }, () => [] as { index: number; nodes: number[]; units: number[] }[]);
  effects.forEach((effect, index) => {
    for (let place = 0; place < effect.nodes.length; place++) {
      const node = effect.nodes[place];
      const ofPart = reach[memberOf[node]];
      if (ofPart.at(-1)?.index !== index) ofPart.push({ index, nodes: [], units: [] });
      ofPart[ofPart.length - 1].nodes.push(placeOf[node]);
      ofPart[ofPart.length - 1].units.push(effect.units[place]);
    }
  });
  return reach;
}
