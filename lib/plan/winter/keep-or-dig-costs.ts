import { type Cut, cutAt, cutCents } from "./keep-or-dig-cuts";
import { type FlowPart, flowParts } from "./keep-or-dig-parts";
import type { Setting, SwitchProblem } from "./keep-or-dig-problem";

/**
 * What settings of a problem cost: exactly, by solving the flow, or at least, by the cuts found so far. Cuts hold whatever the limits are,
 * so one of these serves many searches. Every exact cost is found once.
 */
export class SwitchCosts {
  readonly problem: SwitchProblem;
  readonly parts: readonly FlowPart[];
  readonly fixedCents: number;
  readonly #cuts: Cut[][];
  readonly #known: Map<string, number>[];
  #flowCount = 0;

  constructor(problem: SwitchProblem) {
    this.problem = problem;
    const { parts, fixedCents } = flowParts(problem);
    this.parts = parts;
    this.fixedCents = fixedCents;
    this.#cuts = parts.map(() => []);
    this.#known = parts.map(() => new Map());
  }

  /** Flows solved so far, a part at a time. */
  get flowCount(): number {
    return this.#flowCount;
  }

  /** What a setting costs in all; the cuts that it gives join the rest. */
  cents(setting: Setting): number {
    const on = setting.map(Number);
    return this.parts.reduce((sum, _, part) => sum + this.#partCents(part, on), this.#ownCents(on));
  }

  /** What a setting costs at least, from the cuts alone. */
  centsAtLeast(setting: Setting): number {
    const on = setting.map(Number);
    return this.parts.reduce((sum, _, part) => sum + this.strongestKnown(part, on).cents, this.#ownCents(on));
  }

  /** The known cut that says most about a part at a point (switches may be part on), and what it says; without one a part costs 0 or more. */
  strongestKnown(part: number, on: ArrayLike<number>): { readonly cut: Cut | null; readonly cents: number } {
    let strongest: { cut: Cut | null; cents: number } = { cut: null, cents: 0 };
    for (const cut of this.#cuts[part]) {
      const cents = cutCents(cut, this.parts[part], on);
      if (cents > strongest.cents) strongest = { cut, cents };
    }
    return strongest;
  }

  /** A part's flow at a point: the cut that it gives, and what that cut says there. */
  atPoint(part: number, on: ArrayLike<number>): { readonly cut: Cut; readonly cents: number } {
    const { cut } = this.#solve(part, on);
    return { cut, cents: cutCents(cut, this.parts[part], on) };
  }

  #partCents(part: number, on: ArrayLike<number>): number {
    let key = "";
    for (const index of this.parts[part].switches) key += on[index];
    const known = this.#known[part].get(key);
    if (known !== undefined) return known;
    const { cents } = this.#solve(part, on);
    this.#known[part].set(key, cents);
    return cents;
  }

  #solve(part: number, on: ArrayLike<number>) {
    this.#flowCount++;
    const solved = cutAt(this.parts[part], part, on);
    const says = cutCents(solved.cut, this.parts[part], on);
    if (says > this.strongestKnown(part, on).cents + 1e-6) this.#cuts[part].push(solved.cut);
    return solved;
  }

  #ownCents(on: ArrayLike<number>): number {
    const { cents, baseCents } = this.problem;
    return cents.reduce((sum, ofSwitch, index) => sum + ofSwitch * on[index], baseCents + this.fixedCents);
  }
}
