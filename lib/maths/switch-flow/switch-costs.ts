import { type Floor, floorAt, floorCost } from "./floors";
import { type FlowPart, flowParts } from "./parts";
import type { Selection, SwitchProblem } from "./problem";

/** The place among the parts of one that no switch reaches: none. */
const STILL = -1;

/**
 * What selections of a problem cost: exactly, by solving the flow, or at least, by the floors found so far. Floors hold whatever the limits are,
 * so one of these serves many searches. Every exact cost is found once.
 */
export class SwitchCosts {
  readonly problem: SwitchProblem;
  /** The parts of the network that a switch reaches into. */
  readonly parts: readonly FlowPart[];
  /** The other parts' floors, which say what those cost whatever is on; and what they come to. */
  readonly still: readonly Floor[];
  readonly fixedCost: number;
  readonly #floors: Floor[][];
  readonly #known: Map<string, number>[];
  #flowCount = 0;

  constructor(problem: SwitchProblem) {
    this.problem = problem;
    const parts = flowParts(problem);
    this.parts = parts.filter(({ switches }) => switches.length > 0);
    this.still = parts.filter(({ switches }) => switches.length === 0).map((part) => floorAt(part, STILL, []).floor);
    this.fixedCost = this.still.reduce((sum, { constant }) => sum + constant, 0);
    this.#floors = this.parts.map(() => []);
    this.#known = this.parts.map(() => new Map());
  }

  /** Flows solved so far, a part at a time. */
  get flowCount(): number {
    return this.#flowCount;
  }

  /** What a selection costs in all; the floors that it gives join the rest. */
  cost(selection: Selection): number {
    const on = selection.map(Number);
    return this.parts.reduce((sum, _, part) => sum + this.#partCost(part, on), this.#ownCost(on));
  }

  /** What a selection costs at least, from the floors alone. */
  costAtLeast(selection: Selection): number {
    const on = selection.map(Number);
    return this.parts.reduce((sum, _, part) => sum + this.strongestKnown(part, on).cost, this.#ownCost(on));
  }

  /** The known floor that says most about a part at a point (switches may be part on), and what it says; without one a part costs 0 or more. */
  strongestKnown(part: number, on: ArrayLike<number>): { readonly floor: Floor | null; readonly cost: number } {
    let strongest: { floor: Floor | null; cost: number } = { floor: null, cost: 0 };
    for (const floor of this.#floors[part]) {
      const cost = floorCost(floor, this.parts[part], on);
      if (cost > strongest.cost) strongest = { floor, cost };
    }
    return strongest;
  }

  /** A part's flow at a point: the floor that it gives, and what that floor says there. */
  atPoint(part: number, on: ArrayLike<number>): { readonly floor: Floor; readonly cost: number } {
    const { floor } = this.#solve(part, on);
    return { floor, cost: floorCost(floor, this.parts[part], on) };
  }

  #partCost(part: number, on: ArrayLike<number>): number {
    let key = "";
    for (const index of this.parts[part].switches) key += on[index];
    const known = this.#known[part].get(key);
    if (known !== undefined) return known;
    const { cost } = this.#solve(part, on);
    this.#known[part].set(key, cost);
    return cost;
  }

  #solve(part: number, on: ArrayLike<number>) {
    this.#flowCount++;
    const solved = floorAt(this.parts[part], part, on);
    const says = floorCost(solved.floor, this.parts[part], on);
    if (says > this.strongestKnown(part, on).cost + 1e-6) this.#floors[part].push(solved.floor);
    return solved;
  }

  #ownCost(on: ArrayLike<number>): number {
    const { switchCost, baseCost } = this.problem;
    return switchCost.reduce((sum, ofSwitch, index) => sum + ofSwitch * on[index], baseCost + this.fixedCost);
  }
}
