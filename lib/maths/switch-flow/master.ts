import type { MixedIntegerSolver, OpenProgramme, ProgrammeRow } from "../mixed-integer";
import { type Floor, floorCost } from "./floors";
import type { SwitchLimit } from "./problem";
import type { SwitchCosts } from "./switch-costs";

/**
 * What the relaxation says: no setting within the bounds costs less than `bound`, with the floors in use; `on` is where it does,
 * switches part on; `reducedCosts[i]` is what switch i off its bound would cost more. `null` when no setting keeps to the limits.
 */
export type Relaxed = {
  readonly bound: number;
  readonly on: Float64Array;
  readonly partCosts: Float64Array;
  readonly reducedCosts: Float64Array;
} | null;

/** How far floating point may be off in a bound of whole numbers. */
const FORGIVEN = 0.01;
/** A floor must lift a part's cost by more than floating point may be off. */
const SLIGHT = 0.001;
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
  readonly #limitCount: number;
  #rows: { readonly floor: Floor; idle: number }[] = [];

  constructor(solver: MixedIntegerSolver, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    const { switchCost } = costs.problem;
    this.#costs = costs;
    this.#switchCount = switchCost.length;
    this.#limitCount = limits.length;
    this.#programme = solver.open({
      costs: [...switchCost, ...costs.parts.map(() => 1)],
      lowers: [...switchCost, ...costs.parts].map(() => 0),
      uppers: [...switchCost.map(() => 1), ...costs.parts.map(() => Number.POSITIVE_INFINITY)],
      isWhole: [...switchCost, ...costs.parts].map(() => false),
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
    if (answer.status === "infeasible") return null;
    this.#dropIdle(answer.rowSums);
    const { baseCost } = this.#costs.problem;
    return {
      bound: Math.ceil(answer.objective + baseCost + this.#costs.fixedCost - FORGIVEN),
      on: answer.columns.subarray(0, this.#switchCount),
      partCosts: answer.columns.subarray(this.#switchCount),
      reducedCosts: answer.reducedCosts.subarray(0, this.#switchCount),
    };
  }

  close(): void {
    this.#programme.close();
  }

  #dropIdle(rowSums: Float64Array): void {
    const idle: number[] = [];
    this.#rows.forEach((row, place) => {
      row.idle = rowSums[this.#limitCount + place] > row.floor.constant + 0.5 ? row.idle + 1 : 0;
      if (row.idle > IDLE_SOLVES) idle.push(place);
    });
    if (idle.length === 0) return;
    this.#programme.removeRows(idle.map((place) => this.#limitCount + place));
    const gone = new Set(idle);
    this.#rows = this.#rows.filter((_, place) => !gone.has(place));
  }
}

/** A limit as a row over the switches' columns, its greatest weight as 1. */
export function limitRow({ weights, atMost }: SwitchLimit): ProgrammeRow {
  const columns = [...weights.keys()].filter((index) => weights[index] !== 0n);
  const greatest = columns.reduce((most, index) => Math.max(most, Math.abs(Number(weights[index]))), 0) || 1;
  return {
    lower: Number.NEGATIVE_INFINITY,
    upper: Number(atMost) / greatest,
    columns,
    coefficients: columns.map((index) => Number(weights[index]) / greatest),
  };
}

/** A floor as a row: the switches' columns come first, then one a part for its cost. */
export function floorRow({ part, constant, slopes }: Floor, { parts, problem }: SwitchCosts): ProgrammeRow {
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
 * point of the new floors towards a setting well within, which makes them stronger for the rest; where that lifts nothing the
 * point itself is taken. Returns how many were added: 0 proves that the point's costs are true.
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
