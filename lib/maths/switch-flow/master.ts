import type { LinearSolver, OpenProgramme, ProgrammeRow } from "../linear-programme";
import { type Floor, floorCost } from "./floors";
import type { SwitchLimit } from "./problem";
import type { Weights } from "./proof";
import type { SwitchCosts } from "./switch-costs";

/**
 * What the relaxation says, as near as floating point comes: no selection within the bounds costs less than about `about`, with the floors in
 * use; `on` is where it does, switches part on. `weights` prove what can be said exactly. `null` when it finds no selection within the limits.
 */
export type Relaxed = {
  readonly about: number;
  readonly on: Float64Array;
  readonly partCosts: Float64Array;
  readonly weights: Weights;
} | null;

/** A floor must lift a part's cost by more than floating point may be off. */
const SLIGHT = 0.001;
/** Prices of rows are rounded to so many binary places; those of limits are told finer, since a limit counts in small parts. */
const WEIGHT_BITS = 32n;
const FINER_BITS = 128n;
/** A floor that has been slack in so many solves on end is dropped; the costs still know it. */
const IDLE_SOLVES = 40;

/**
 * The master programme of Benders' decomposition, relaxed: a column a switch, and a column a part for what its flow costs, held up by the floors.
 * Source: J. F. Benders, "Partitioning procedures for solving mixed-variables programming problems", Numerische Mathematik 4, 1962.
 */
export class Master {
  readonly #programme: OpenProgramme;
  readonly #costs: SwitchCosts;
  readonly #switchCount: number;
  readonly #limits: readonly SwitchLimit[];
  #rows: { readonly floor: Floor; idle: number }[] = [];

  constructor(solver: LinearSolver, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    const { switchCost } = costs.problem;
    this.#costs = costs;
    this.#switchCount = switchCost.length;
    this.#limits = limits;
    this.#programme = solver.open({
      costs: [...switchCost, ...costs.parts.map(() => 1)],
      lowers: [...switchCost, ...costs.parts].map(() => 0),
      uppers: [...switchCost.map(() => 1), ...costs.parts.map(() => Number.POSITIVE_INFINITY)],
      rows: limits.map(limitRow),
    });
  }

  get floorCount(): number {
    return this.#rows.length;
  }

  add(floors: readonly Floor[]): void {
    this.#programme.addRows(floors.map((floor) => floorRow(floor, this.#costs)));
    for (const floor of floors) this.#rows.push({ floor, idle: 0 });
  }

  relax({ lowers, uppers }: { readonly lowers: Uint8Array; readonly uppers: Uint8Array }): Relaxed {
    this.#programme.setBounds(Array.from(lowers), Array.from(uppers));
    const answer = this.#programme.solve();
    if (!answer) return null;
    const weights = this.#weights(answer.rowPrices);
    this.#dropIdle(answer.rowSums);
    return {
      about: answer.objective + this.#costs.problem.baseCost + this.#costs.fixedCost,
      on: answer.columns.subarray(0, this.#switchCount),
      partCosts: answer.columns.subarray(this.#switchCount),
      weights,
    };
  }

  close(): void {
    this.#programme.close();
  }

  /** The prices of the rows as whole weights, rounded so that the floors of no part weigh more than one. */
  #weights(rowPrices: Float64Array): Weights {
    const left = this.#costs.parts.map(() => 2n ** WEIGHT_BITS);
    const floors = this.#rows.flatMap(({ floor }, place) => {
      const price = wholeWeight(rowPrices[this.#limits.length + place]);
      const over = price - left[floor.part];
      const weight = over > 0n ? price - over : price;
      left[floor.part] -= weight;
      return weight > 0n ? [{ floor, weight }] : [];
    });
    const limits = this.#limits.map((limit, place) => {
      const price = wholeWeight(-rowPrices[place]);
      return price > 0n ? (price << FINER_BITS) / greatestWeight(limit) : 0n;
    });
    return {
      kind: "costs",
      parts: 2n ** WEIGHT_BITS,
      floors,
      finer: limits.length > 0 ? 2n ** FINER_BITS : 1n,
      limits,
    };
  }

  #dropIdle(rowSums: Float64Array): void {
    const idle: number[] = [];
    this.#rows.forEach((row, place) => {
      row.idle = rowSums[this.#limits.length + place] > row.floor.constant + 0.5 ? row.idle + 1 : 0;
      if (row.idle > IDLE_SOLVES) idle.push(place);
    });
    if (idle.length === 0) return;
    this.#programme.removeRows(idle.map((place) => this.#limits.length + place));
    const gone = new Set(idle);
    this.#rows = this.#rows.filter((_, place) => !gone.has(place));
  }
}

const wholeWeight = (price: number): bigint => (price > 0 ? BigInt(Math.floor(price * 2 ** Number(WEIGHT_BITS))) : 0n);

/** The greatest weight of a switch in a limit, whatever its sign; 1 if all are 0. */
function greatestWeight({ weights }: SwitchLimit): bigint {
  let greatest = 1n;
  for (const weight of weights) {
    const size = weight < 0n ? -weight : weight;
    if (size > greatest) greatest = size;
  }
  return greatest;
}

/** A limit as a row over the switches' columns, its greatest weight as 1. */
function limitRow(limit: SwitchLimit): ProgrammeRow {
  const columns = [...limit.weights.keys()].filter((index) => limit.weights[index] !== 0n);
  const greatest = Number(greatestWeight(limit));
  return {
    lower: Number.NEGATIVE_INFINITY,
    upper: Number(limit.atMost) / greatest,
    columns,
    coefficients: columns.map((index) => Number(limit.weights[index]) / greatest),
  };
}

/** A floor as a row: the switches' columns come first, then one a part for its cost. */
function floorRow({ part, constant, slopes }: Floor, { parts, problem }: SwitchCosts): ProgrammeRow {
  const columns = [problem.switchCost.length + part];
  const coefficients = [1];
  parts[part].switches.forEach((index, place) => {
    if (slopes[place] === 0) return;
    columns.push(index);
    coefficients.push(slopes[place]);
  });
  return { lower: constant, upper: Number.POSITIVE_INFINITY, columns, coefficients };
}

/**
 * Adds floors that lift the master at a relaxed point: those known already where they do, else new ones from the flow. `inside` draws the
 * point of the new floors towards a selection well within, which makes them stronger for the rest; where that lifts nothing the
 * point itself is taken. Returns how many were added: with 0 the point's costs are true.
 * Source of drawing inside: W. Ben-Ameur and J. Neto, "Acceleration of cutting-plane and column generation algorithms", Networks 49(1), 2007.
 */
export function liftAt(
  master: Master,
  costs: SwitchCosts,
  relaxed: NonNullable<Relaxed>,
  inside: ArrayLike<number> | null,
): number {
  const { on, partCosts } = relaxed;
  const halfway = inside && on.map((share, index) => (share + inside[index]) / 2);
  const floors: Floor[] = [];
  costs.parts.forEach((part, index) => {
    const least = partCosts[index] + SLIGHT;
    const lifts = (floor: Floor | null): floor is Floor => floor !== null && floorCost(floor, part, on) > least;
    let { floor } = costs.strongestKnown(index, on);
    if (!lifts(floor) && halfway) ({ floor } = costs.atPoint(index, halfway));
    if (!lifts(floor)) ({ floor } = costs.atPoint(index, on));
    if (lifts(floor)) floors.push(floor);
  });
  master.add(floors);
  return floors.length;
}
