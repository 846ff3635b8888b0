import type { MixedIntegerSolver, OpenProgramme, ProgrammeRow } from "#lib/maths/mixed-integer";
import type { SwitchCosts } from "./keep-or-dig-costs";
import { type Cut, cutCents } from "./keep-or-dig-cuts";
import type { SwitchLimit } from "./keep-or-dig-problem";

/**
 * What the relaxation says: no setting within the bounds costs less than `boundCents`, with the cuts in use; `on` is where it does,
 * switches part on; `reducedCents[i]` is what switch i off its bound would cost more. `null` when no setting keeps to the limits.
 */
export type Relaxed = {
  readonly boundCents: number;
  readonly on: Float64Array;
  readonly partCents: Float64Array;
  readonly reducedCents: Float64Array;
} | null;

/** How far floating point may be off in a bound of whole cents. */
const FORGIVEN_CENTS = 0.01;
/** A cut must lift a part's cost by more than floating point may be off. */
const SLIGHT_CENTS = 0.001;
/** A cut that has been slack in so many solves on end is dropped; the costs still know it. */
const IDLE_SOLVES = 40;

/**
 * The master programme of Benders' decomposition, relaxed: a column a switch, and a column a part for what its flow costs, held up by the cuts.
 * Source: J. F. Benders, "Partitioning procedures for solving mixed-variables programming problems", Numerische Mathematik 4, 1962.
 */
export class Master {
  readonly #programme: OpenProgramme;
  readonly #costs: SwitchCosts;
  readonly #switchCount: number;
  readonly #limitCount: number;
  #rows: { readonly cut: Cut; idle: number }[] = [];

  constructor(solver: MixedIntegerSolver, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    const { cents } = costs.problem;
    this.#costs = costs;
    this.#switchCount = cents.length;
    this.#limitCount = limits.length;
    this.#programme = solver.open({
      costs: [...cents, ...costs.parts.map(() => 1)],
      lowers: [...cents, ...costs.parts].map(() => 0),
      uppers: [...cents.map(() => 1), ...costs.parts.map(() => Number.POSITIVE_INFINITY)],
      isWhole: [...cents, ...costs.parts].map(() => false),
      rows: limits.map(limitRow),
    });
  }

  get cutCount(): number {
    return this.#rows.length;
  }

  add(cuts: readonly Cut[]): void {
    this.#programme.addRows(cuts.map((cut) => cutRow(cut, this.#costs)));
    for (const cut of cuts) this.#rows.push({ cut, idle: 0 });
  }

  relax({ lowers, uppers }: { readonly lowers: Uint8Array; readonly uppers: Uint8Array }): Relaxed {
    this.#programme.setBounds(Array.from(lowers), Array.from(uppers));
    const answer = this.#programme.solve();
    if (answer.status === "infeasible") return null;
    this.#dropIdle(answer.rowSums);
    const { baseCents } = this.#costs.problem;
    return {
      boundCents: Math.ceil(answer.objective + baseCents + this.#costs.fixedCents - FORGIVEN_CENTS),
      on: answer.columns.subarray(0, this.#switchCount),
      partCents: answer.columns.subarray(this.#switchCount),
      reducedCents: answer.reducedCosts.subarray(0, this.#switchCount),
    };
  }

  close(): void {
    this.#programme.close();
  }

  #dropIdle(rowSums: Float64Array): void {
    const idle: number[] = [];
    this.#rows.forEach((row, place) => {
      row.idle = rowSums[this.#limitCount + place] > row.cut.constant + 0.5 ? row.idle + 1 : 0;
      if (row.idle > IDLE_SOLVES) idle.push(place);
    });
    if (idle.length === 0) return;
    this.#programme.removeRows(idle.map((place) => this.#limitCount + place));
    const gone = new Set(idle);
    this.#rows = this.#rows.filter((_, place) => !gone.has(place));
  }
}

/** A limit as a row over the switches' columns. */
export function limitRow({ weights, atMost }: SwitchLimit): ProgrammeRow {
  const columns = [...weights.keys()].filter((index) => weights[index] !== 0);
  return {
    lower: Number.NEGATIVE_INFINITY,
    upper: atMost,
    columns,
    coefficients: columns.map((index) => weights[index]),
  };
}

/** A cut as a row: the switches' columns come first, then one a part for its cost. */
export function cutRow({ part, constant, slopes }: Cut, { parts, problem }: SwitchCosts): ProgrammeRow {
  const columns = [problem.cents.length + part];
  const coefficients = [1];
  parts[part].switches.forEach((index, place) => {
    if (slopes[place] === 0) return;
    columns.push(index);
    coefficients.push(slopes[place]);
  });
  return { lower: constant, upper: Number.POSITIVE_INFINITY, columns, coefficients };
}

/**
 * Adds cuts that lift the master at a relaxed point: those known already where they do, else new ones from the flow. `inside` draws the
 * point of the new cuts towards a setting well within, which makes them stronger for the rest; where that lifts nothing the
 * point itself is taken. Returns how many were added: 0 proves that the point's costs are true.
 * Source of drawing inside: W. Ben-Ameur and J. Neto, "Acceleration of cutting-plane and column generation algorithms", Networks 49(1), 2007.
 */
export function cutOff(
  master: Master,
  costs: SwitchCosts,
  relaxed: NonNullable<Relaxed>,
  inside: ArrayLike<number> | null,
): number {
  const { on, partCents } = relaxed;
  const halfway = inside && on.map((share, index) => (share + inside[index]) / 2);
  const cuts: Cut[] = [];
  costs.parts.forEach((part, index) => {
    const least = partCents[index] + SLIGHT_CENTS;
    const lifts = (cut: Cut | null): cut is Cut => cut !== null && cutCents(cut, part, on) > least;
    let { cut } = costs.strongestKnown(index, on);
    if (!lifts(cut) && halfway) ({ cut } = costs.atPoint(index, halfway));
    if (!lifts(cut)) ({ cut } = costs.atPoint(index, on));
    if (lifts(cut)) cuts.push(cut);
  });
  master.add(cuts);
  return cuts.length;
}
