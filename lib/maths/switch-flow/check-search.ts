import { checkFlow } from "../check-flow";
import type { FlowNetwork } from "../flow-network";
import { minCostFlow } from "../min-cost-flow";
import { openBounds, type SwitchBounds, withBound } from "./bounds";
import type { Floor } from "./floors";
import { components } from "./parts";
import { keepsTo, type Selection, type SwitchLimit, type SwitchProblem } from "./problem";
import { type Case, leastOf, passedBy, type Row, roundedUp, type Weights, weighed } from "./proof";
import type { SearchEnd } from "./search";

/**
 * Proves what a search found, trusting nothing of it: the best selection keeps to the limits and its flow, solved and proved anew, costs what is said;
 * every floor comes from prices that allow no arc a gain; and the cases of the proof, which cover every selection, sum in whole numbers to a cost no less
 * than the bound, or past the limits. An empty list is a proof.
 * @param still  floors of the parts of the network that no switch reaches
 */
export function checkSearch(
  problem: SwitchProblem,
  limits: readonly SwitchLimit[],
  still: readonly Floor[],
  { status, best, bound, proof }: SearchEnd,
): string[] {
  const faults: string[] = [];
  const floors = new CheckedFloors(problem, faults);
  const own = {
    constant: still.reduce((sum, floor) => sum + floors.row(floor, "still").constant, BigInt(problem.baseCost)),
    perSwitch: problem.switchCost.map(BigInt),
  };
  floors.weighOneAtMost(
    still.map((floor) => ({ floor, weight: 1n })),
    1n,
    "still",
  );
  const leastOfWeights = (weights: Weights, bounds: SwitchBounds, name: string): number => {
    if (weights.parts <= 0n || weights.finer <= 0n || weights.limits.some((weight) => weight < 0n)) {
      faults.push(`${name}: weights must not be negative`);
      return Number.NEGATIVE_INFINITY;
    }
    floors.weighOneAtMost(weights.floors, weights.parts, name);
    const rows = weights.floors.map(({ floor }) => floors.row(floor, name));
    return roundedUp(leastOf(weighed(weights, own, rows, limits), bounds), weights.parts * weights.finer);
  };
  const walk = ({ proof: because }: Case, bounds: SwitchBounds, name: string): void => {
    if (because.kind === "cases") {
      const { index, off, on } = because;
      walk(off, boundMore(bounds, index, 0), `${name}, ${index} off`);
      walk(on, boundMore(bounds, index, 1), `${name}, ${index} on`);
    } else if (because.kind === "barred") {
      const passed = passedBy(because.limits, limits, own.perSwitch.length);
      if (because.limits.some((weight) => weight < 0n) || leastOf(passed, bounds) <= 0n)
        faults.push(`${name}: the limits may be kept`);
    } else if (status === "infeasible") faults.push(`${name}: nothing says that the limits cannot be kept`);
    else {
      const least = leastOfWeights(because, bounds, name);
      if (least < bound) faults.push(`${name}: proved to cost ${least} at least, not ${bound}`);
    }
  };
  walk(proof, openBounds(problem.switchCost.length), "every selection");
  if (status === "infeasible" ? best !== null : status === "optimal" && best?.cost !== bound)
    faults.push(`${status} with ${best ? `a best of ${best.cost}` : "no best"} and a bound of ${bound}`);
  return best ? [...faults, ...checkSelection(problem, limits, best.selection, best.cost)] : faults;
}

/** A switch that is bound already stays so, and a selection of the other kind is in no case: then nothing is asked of it. */
function boundMore(bounds: SwitchBounds, index: number, value: number): SwitchBounds {
  return bounds.lowers[index] === bounds.uppers[index] ? bounds : withBound(bounds, index, value);
}

/** Whether a selection keeps to the limits and costs what is said, by a flow that carries its own certificate. */
function checkSelection(
  { flow, effects, switchCost, baseCost }: SwitchProblem,
  limits: readonly SwitchLimit[],
  selection: Selection,
  cost: number,
): string[] {
  const supply = flow.supply.slice();
  let own = baseCost;
  selection.forEach((isOn, index) => {
    if (!isOn) return;
    own += switchCost[index];
    effects[index].nodes.forEach((node, at) => {
      supply[node] += effects[index].units[at];
    });
  });
  const network = { ...flow, supply };
  const solution = minCostFlow(network);
  const faults = checkFlow(network, solution);
  if (selection.length !== switchCost.length)
    faults.push(`the best sets ${selection.length} of ${switchCost.length} switches`);
  if (!keepsTo(limits, selection)) faults.push("the best does not keep to the limits");
  if (own + solution.totalCost !== cost)
    faults.push(`the best costs ${own + solution.totalCost}, the search says ${cost}`);
  return faults;
}

/** Floors made again from their prices, each once. */
class CheckedFloors {
  readonly #problem: SwitchProblem;
  readonly #partOf: Int32Array;
  readonly #faults: string[];
  readonly #rows = new Map<Floor, Row>();

  constructor(problem: SwitchProblem, faults: string[]) {
    this.#problem = problem;
    this.#faults = faults;
    this.#partOf = components(problem.flow);
    const { arcCount, from, to } = problem.flow;
    for (let arc = 0; arc < arcCount; arc++)
      if (this.#partOf[from[arc]] !== this.#partOf[to[arc]]) faults.push(`arc ${arc} leads from part to part`);
  }

  /** The row that a floor's prices give over all switches. */
  row(floor: Floor, name: string): Row {
    const known = this.#rows.get(floor);
    if (known) return known;
    const { flow, giverCount, effects } = this.#problem;
    const price = new Int32Array(flow.nodeCount);
    floor.nodes.forEach((node, at) => {
      price[node] = floor.prices[at];
      if (this.#partOf[node] !== this.#partOf[floor.nodes[0]]) this.#faults.push(`${name}: a floor over two parts`);
    });
    this.#faults.push(...priceFaults(flow, giverCount, price).map((fault) => `${name}: ${fault}`));
    const worth = (nodes: ArrayLike<number>, units: ArrayLike<number>) => {
      let sum = 0;
      for (let at = 0; at < nodes.length; at++) sum += units[at] * price[nodes[at]];
      if (!Number.isSafeInteger(sum)) this.#faults.push(`${name}: a row past whole numbers`);
      return BigInt(sum);
    };
    const row = {
      constant: -worth([...price.keys()], flow.supply),
      switches: [...effects.keys()],
      slopes: effects.map(({ nodes, units }) => worth(nodes, units)),
    };
    this.#rows.set(floor, row);
    return row;
  }

  /** No part may be counted more than once. */
  weighOneAtMost(floors: Weights["floors"], parts: bigint, name: string): void {
    const ofPart = new Map<number, bigint>();
    for (const { floor, weight } of floors) {
      const part = this.#partOf[floor.nodes[0]];
      const sum = (ofPart.get(part) ?? 0n) + weight;
      ofPart.set(part, sum);
      if (weight < 0n || sum > parts) this.#faults.push(`${name}: part ${part} weighs ${sum} of ${parts}`);
    }
  }
}

/** What keeps prices from bounding the cost at every supply: an arc that gains, a giver priced below 0, a want above what going without costs. */
function priceFaults(
  { nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork,
  giverCount: number,
  price: Int32Array,
): string[] {
  const faults: string[] = [];
  for (let arc = 0; arc < arcCount; arc++)
    if (cost[arc] + price[from[arc]] - price[to[arc]] < 0) faults.push(`arc ${arc} gains`);
  for (let node = 0; node < nodeCount; node++) {
    const gives = node < giverCount || supply[node] > 0;
    if (gives && price[node] < 0) faults.push(`node ${node} gives at ${price[node]}`);
    if (!gives && supply[node] < 0 && price[node] > unmetCost[node])
      faults.push(`node ${node} is priced above going without`);
  }
  return faults;
}
