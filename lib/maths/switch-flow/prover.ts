import { type LinearSolver, solveOnce } from "../linear-programme";
import { openSwitches, type SwitchBounds } from "./bounds";
import type { Floor } from "./floors";
import { keepsTo, type Selection, type SwitchLimit } from "./problem";
import { type Barred, leastOf, passedBy, type Row, roundedUp, type Terms, type Weights, weighed } from "./proof";
import type { SwitchCosts } from "./switch-costs";

/** Turns what floating point suggests into proofs: every bound it gives is summed in whole numbers. */
export class Prover {
  readonly #solver: LinearSolver;
  readonly #costs: SwitchCosts;
  readonly #limits: readonly SwitchLimit[];
  readonly #own: Terms;
  readonly #rows = new Map<Floor, Row>();

  constructor(solver: LinearSolver, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    const { baseCost, switchCost } = costs.problem;
    this.#solver = solver;
    this.#costs = costs;
    this.#limits = limits;
    this.#own = { constant: BigInt(baseCost + costs.fixedCost), perSwitch: switchCost.map(BigInt) };
  }

  /** What no selection within the bounds costs less than, by these weights. */
  bound = (weights: Weights, bounds: SwitchBounds): number =>
    roundedUp(leastOf(this.#terms(weights), bounds), weights.parts * weights.finer);

  /** The open switches that can be bound, each to a value, since turned the other way they cost no less than the best by these weights. */
  dearTurns(weights: Weights, bounds: SwitchBounds, bestCost: number): { index: number; value: number }[] {
    const terms = this.#terms(weights);
    const least = leastOf(terms, bounds);
    return openSwitches(bounds).flatMap((index) => {
      const cost = terms.perSwitch[index];
      const turned = least + (cost < 0n ? -cost : cost);
      return roundedUp(turned, weights.parts * weights.finer) >= bestCost ? [{ index, value: cost < 0n ? 1 : 0 }] : [];
    });
  }

  /** Without a floor: what the switches cost by themselves. */
  nothingKnown = (): Weights => ({
    kind: "costs",
    parts: 1n,
    floors: [],
    finer: 1n,
    limits: this.#limits.map(() => 0n),
  });

  /** A selection's own proof: it passes a limit, or costs what the strongest floors say. Its cost must have been asked for. */
  ofSelection(selection: Selection): Weights | Barred {
    const passed = this.#limits.findIndex((limit) => !keepsTo([limit], selection));
    if (passed >= 0) return { kind: "barred", limits: this.#limits.map((_, place) => (place === passed ? 1n : 0n)) };
    const on = selection.map(Number);
    const floors = this.#costs.parts.flatMap((_, part) => {
      const { floor } = this.#costs.strongestKnown(part, on);
      return floor ? [{ floor, weight: 1n }] : [];
    });
    return { ...this.nothingKnown(), floors };
  }

  /** Weights on the limits by which every selection within the bounds passes them; null when none are found. */
  barred(bounds: SwitchBounds): Barred | null {
    const alone = this.#limits.map((_, chosen) => this.#limits.map((_, place) => (place === chosen ? 1n : 0n)));
    for (const limits of [...alone, this.#together(bounds)])
      if (leastOf(passedBy(limits, this.#limits, this.#own.perSwitch.length), bounds) > 0n)
        return { kind: "barred", limits };
    return null;
  }

  /** Weights by which the limits together are passed the most, as near as floating point comes: the prices of the least that must be passed. */
  #together({ lowers, uppers }: SwitchBounds): bigint[] {
    const switchCount = lowers.length;
    const scales = this.#limits.map(({ weights }) =>
      weights.reduce((most, weight) => Math.max(most, Math.abs(Number(weight))), 1),
    );
    const columns = [...lowers, ...this.#limits];
    const answer = solveOnce(this.#solver, {
      costs: columns.map((_, column) => (column < switchCount ? 0 : 1)),
      lowers: columns.map((_, column) => (column < switchCount ? lowers[column] : 0)),
      uppers: columns.map((_, column) => (column < switchCount ? uppers[column] : Number.POSITIVE_INFINITY)),
      rows: this.#limits.map(({ weights, atMost }, place) => ({
        lower: Number.NEGATIVE_INFINITY,
        upper: Number(atMost) / scales[place],
        columns: [...weights.keys(), switchCount + place],
        coefficients: [...weights.map((weight) => Number(weight) / scales[place]), -1],
      })),
    });
    if (!answer) throw new RangeError("what passes limits by as much as it may must have an answer");
    const { rowPrices } = answer;
    const common = scales.reduce((most, scale) => Math.max(most, scale), 1) * 2 ** 40;
    return scales.map((scale, place) => BigInt(Math.round(Math.max(0, -rowPrices[place]) * (common / scale))));
  }

  #terms = (weights: Weights): Terms =>
    weighed(
      weights,
      this.#own,
      weights.floors.map(({ floor }) => this.#row(floor)),
      this.#limits,
    );

  #row(floor: Floor): Row {
    const known = this.#rows.get(floor);
    if (known) return known;
    const row = {
      constant: BigInt(floor.constant),
      switches: this.#costs.parts[floor.part].switches,
      slopes: Array.from(floor.slopes, BigInt),
    };
    this.#rows.set(floor, row);
    return row;
  }
}
