import type { LinearSolver } from "../linear-programme";
import { isSure, openBounds, openSwitches, wholeSelection } from "./bounds";
import { type Branch, barred, raised, withoutDear } from "./branch";
import { liftAt, Master } from "./master";
import { keepsTo, type Selection, type SwitchLimit } from "./problem";
import type { Case } from "./proof";
import { Prover } from "./prover";
import { improved } from "./small-steps";
import { bestSplit, type Half, halves, type Split } from "./split";
import type { SwitchCosts } from "./switch-costs";

/** A selection and what it costs. */
type Costed = { readonly selection: Selection; readonly cost: number };

/** How far a search has come. `best` is null until a selection that keeps to the limits is found; no selection costs less than `bound`. */
export type SearchProgress = {
  readonly best: Costed | null;
  readonly bound: number;
  readonly floorCount: number;
  readonly branchCount: number;
  readonly openBranchCount: number;
};

/**
 * `optimal`: the best costs what the bound says, exactly. `infeasible`: no selection keeps to the limits. Whatever the status, `proof` proves the
 * bound, and that no selection keeps to the limits where it says so (`checkSearch`).
 */
export type SearchEnd = SearchProgress & {
  readonly status: "optimal" | "stopped" | "infeasible";
  readonly proof: Case;
};

/** Rounds of floors at a branch before it is split; our own choice, by trial. */
const ROUNDS_A_BRANCH = 5;
/** A round must lift the bound by this share of what is left to prove, or the branch is split at once; by trial too. */
const WORTHWHILE_SHARE = 0.02;

/**
 * Finds the cheapest selection that keeps to the limits, and proves it: branch and bound over the relaxed master, with floors wherever it is
 * too hopeful. Yields after every round of floors and every selection that is looked at on the way, so that no step solves more than a few
 * flows and relaxations; send `true` to stop with the best so far and a bound that holds.
 * @param starts  selections to begin with; those that break a limit are passed over
 * @param report  what to yield of the progress
 */
export function* searchSelections<Report>(
  solver: LinearSolver,
  costs: SwitchCosts,
  limits: readonly SwitchLimit[],
  starts: readonly Selection[],
  report: (progress: SearchProgress) => Report,
): Generator<Report, SearchEnd, boolean | undefined> {
  const prover = new Prover(solver, costs, limits);
  if (costs.problem.switchCost.length === 0) return onlySelection(costs, limits, prover);
  const search = new Search(new Master(solver, costs, limits), prover, costs, limits);
  try {
    for (const start of starts) search.consider(start);
    for (const _ of search.steps()) if (yield report(search.progress())) return search.end("stopped");
    return search.end(search.best ? "optimal" : "infeasible");
  } finally {
    search.close();
  }
}

/** Without a switch there is one selection, and it keeps to the limits or not. */
function onlySelection(costs: SwitchCosts, limits: readonly SwitchLimit[], prover: Prover): SearchEnd {
  const best = keepsTo(limits, []) ? { selection: [], cost: costs.cost([]) } : null;
  return {
    status: best ? "optimal" : "infeasible",
    best,
    bound: best?.cost ?? Number.POSITIVE_INFINITY,
    floorCount: 0,
    branchCount: 0,
    openBranchCount: 0,
    proof: { proof: prover.ofSelection([]) },
  };
}

class Search {
  best: Costed | null = null;
  #bound: number;
  #branchCount = 0;
  #open: Branch[] = [];
  #inside: Float64Array | null = null;
  readonly #costs: SwitchCosts;
  readonly #limits: readonly SwitchLimit[];
  readonly #master: Master;
  readonly #prover: Prover;
  readonly #root: Branch;

  constructor(master: Master, prover: Prover, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    this.#costs = costs;
    this.#limits = limits;
    this.#master = master;
    this.#prover = prover;
    const bounds = openBounds(costs.problem.switchCost.length);
    const proof = this.#prover.nothingKnown();
    this.#root = { bounds, bound: this.#prover.bound(proof, bounds), proves: { proof } };
    this.#bound = this.#root.bound;
  }

  close = (): void => this.#master.close();

  progress(): SearchProgress {
    const bestCost = this.best?.cost ?? Number.POSITIVE_INFINITY;
    return {
      best: this.best,
      bound: Math.min(bestCost, this.#bound),
      floorCount: this.#master.floorCount,
      branchCount: this.#branchCount,
      openBranchCount: this.#open.length,
    };
  }

  end = (status: SearchEnd["status"]): SearchEnd => ({ ...this.progress(), status, proof: this.#root.proves });

  consider(selection: Selection): void {
    if (!keepsTo(this.#limits, selection)) return;
    const cost = this.#costs.cost(selection);
    if (!this.best || cost < this.best.cost) this.best = { selection, cost };
  }

  /** The whole search. Between any two steps the best and the bound hold, and the proof proves them. */
  *steps(): Generator<void> {
    const branch = yield* this.#liftRoot();
    if (branch) this.#open.push(branch);
    while (yield* this.#branch()) yield;
  }

  /** Rounds of floors with every switch open, until there are no more. The root as a branch; null when nothing keeps to the limits. */
  *#liftRoot(): Generator<void, Branch | null> {
    for (let branch = this.#root; ; ) {
      const relaxed = this.#master.relax(branch.bounds);
      if (!relaxed) return barred(this.#prover, branch) ? null : branch;
      branch = raised(this.#prover, branch, relaxed);
      this.#bound = branch.bound;
      this.consider(wholeSelection(relaxed.on));
      const inside: Float64Array = this.#inside ?? relaxed.on;
      const added = liftAt(this.#master, this.#costs, relaxed, inside);
      this.#inside = relaxed.on.map((share, index) => (share + inside[index]) / 2);
      if (added === 0) {
        yield* this.#improve();
        return withoutDear(this.#prover, branch, this.#most());
      }
      yield;
    }
  }

  /** Tries to better the best by small steps. */
  *#improve(): Generator<void> {
    if (this.best && this.best.cost > this.#bound)
      this.consider(yield* improved(this.#costs, this.#limits, this.best.selection));
  }

  /** Takes the most hopeful branch: lifts it, and splits it unless it is settled. False when none is left. */
  *#branch(): Generator<void, boolean> {
    this.#open = this.#open.filter(({ bound }) => bound < this.#most()).sort((a, b) => b.bound - a.bound);
    const branch = this.#open.pop();
    if (!branch) {
      this.#bound = this.#most();
      return false;
    }
    this.#branchCount++;
    this.#bound = branch.bound;
    const before = this.best;
    this.#open.push(...(yield* this.#settle(branch)));
    if (this.best !== before) yield* this.#improve();
    this.#bound = this.#open.reduce((least, { bound }) => Math.min(least, bound), this.#most());
    return true;
  }

  #most = (): number => this.best?.cost ?? Number.POSITIVE_INFINITY;

  /** The branches that a branch leaves: none when it is settled. */
  *#settle(start: Branch): Generator<void, Branch[]> {
    let branch = start;
    for (let round = 1; ; round++) {
      if (round > 1) yield;
      const relaxed = this.#master.relax(branch.bounds);
      if (!relaxed) return barred(this.#prover, branch) ? [] : this.#splitAnyhow(branch);
      const before = branch.bound;
      branch = raised(this.#prover, branch, relaxed);
      if (branch.bound >= this.#most()) return [];
      this.consider(wholeSelection(relaxed.on));
      if (branch.bound >= this.#most()) return [];
      const isWhole = relaxed.on.every(isSure);
      const added = liftAt(this.#master, this.#costs, relaxed, null);
      if (added > 0 && isWhole) continue;
      const isSlow = branch.bound - before < WORTHWHILE_SHARE * (this.#most() - branch.bound);
      if (added > 0 && round < ROUNDS_A_BRANCH && !(isSlow && round > 1)) continue;
      branch = withoutDear(this.#prover, branch, this.#most());
      if (openSwitches(branch.bounds).length === 0) return this.#splitAnyhow(branch);
      return this.#split(branch, bestSplit(this.#master, branch.bounds, relaxed));
    }
  }

  /** The halves of a split that are not settled. */
  #split({ bound, proves }: Branch, { index, off, on }: Split): Branch[] {
    const { proof } = proves;
    const open: Branch[] = [];
    const half = ({ bounds, relaxed }: Half): Case => {
      const start: Branch = { bounds, bound, proves: { proof } };
      if (!relaxed && barred(this.#prover, start)) return start.proves;
      const branch = relaxed ? raised(this.#prover, start, relaxed) : start;
      if (branch.bound < this.#most()) open.push(branch);
      return branch.proves;
    };
    proves.proof = { kind: "cases", index, off: half(off), on: half(on) };
    return open;
  }

  /**
   * Where floating point is of no more help: splits on any open switch, and settles a single selection by its own cost. Only where a limit is met
   * exactly, or a bound by less than floating point tells.
   */
  #splitAnyhow(branch: Branch): Branch[] {
    const [index] = openSwitches(branch.bounds);
    if (index !== undefined) return this.#split(branch, halves(this.#master, branch.bounds, index));
    const selection = Array.from(branch.bounds.lowers, (on) => on === 1);
    this.consider(selection);
    branch.proves.proof = this.#prover.ofSelection(selection);
    return [];
  }
}
