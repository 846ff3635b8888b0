import type { MixedIntegerSolver } from "../mixed-integer";
import { fixedByPrice, openBounds, type SwitchBounds, split, wholeSetting } from "./branches";
import { liftAt, Master } from "./master";
import { keepsTo, type Setting, type SwitchLimit } from "./problem";
import { improved } from "./small-steps";
import type { SwitchCosts } from "./switch-costs";

/** A setting and what it costs. */
export type Costed = { readonly setting: Setting; readonly cost: number };

/** How far a search has come. `best` is null until a setting that keeps to the limits is found; no setting costs less than `bound`. */
export type SearchProgress = {
  readonly best: Costed | null;
  readonly bound: number;
  readonly floorCount: number;
  readonly branchCount: number;
  readonly openBranchCount: number;
};

/** `optimal`: the best costs what the bound says, exactly. `infeasible`: no setting keeps to the limits. */
export type SearchEnd = SearchProgress & { readonly status: "optimal" | "stopped" | "infeasible" };

type Branch = { readonly bounds: SwitchBounds; readonly bound: number };

/** Rounds of floors at a branch before it is split; our own setting, by trial. */
const ROUNDS_A_BRANCH = 5;
/** A round must lift the bound by this share of what is left to prove, or the branch is split at once; by trial too. */
const WORTHWHILE_SHARE = 0.02;

/**
 * Finds the cheapest setting that keeps to the limits, and proves it: branch and bound over the relaxed master, with floors wherever it is
 * too hopeful. Yields after every round of floors and every setting that is looked at on the way, so that no step solves more than a few
 * flows and relaxations; send `true` to stop with the best so far and a bound that holds.
 * @param starts  settings to begin with; those that break a limit are passed over
 * @param report  what to yield of the progress
 */
export function* searchSettings<Report>(
  solver: MixedIntegerSolver,
  costs: SwitchCosts,
  limits: readonly SwitchLimit[],
  starts: readonly Setting[],
  report: (progress: SearchProgress) => Report,
): Generator<Report, SearchEnd, boolean | undefined> {
  if (costs.problem.switchCost.length === 0) return onlySetting(costs, limits);
  const search = new Search(solver, costs, limits);
  try {
    for (const start of starts) search.consider(start);
    for (const _ of search.steps())
      if (yield report(search.progress())) return { ...search.progress(), status: "stopped" };
    return { ...search.progress(), status: search.best ? "optimal" : "infeasible" };
  } finally {
    search.close();
  }
}

/** Without a switch there is one setting, and it keeps to the limits or not. */
function onlySetting(costs: SwitchCosts, limits: readonly SwitchLimit[]): SearchEnd {
  const done = { floorCount: 0, branchCount: 0, openBranchCount: 0 };
  if (!keepsTo(limits, [])) return { ...done, status: "infeasible", best: null, bound: Number.POSITIVE_INFINITY };
  const cost = costs.cost([]);
  return { ...done, status: "optimal", best: { setting: [], cost }, bound: cost };
}

class Search {
  best: Costed | null = null;
  #bound = Number.NEGATIVE_INFINITY;
  #branchCount = 0;
  #open: Branch[] = [];
  #inside: Float64Array | null = null;
  readonly #costs: SwitchCosts;
  readonly #limits: readonly SwitchLimit[];
  readonly #master: Master;
  readonly #root: SwitchBounds;

  constructor(solver: MixedIntegerSolver, costs: SwitchCosts, limits: readonly SwitchLimit[]) {
    this.#costs = costs;
    this.#limits = limits;
    this.#master = new Master(solver, costs, limits);
    this.#root = openBounds(costs.problem.switchCost.length);
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

  consider(setting: Setting): void {
    if (!keepsTo(this.#limits, setting)) return;
    const cost = this.#costs.cost(setting);
    if (!this.best || cost < this.best.cost) this.best = { setting, cost };
  }

  /** The whole search. Between any two steps the best and the bound hold. */
  *steps(): Generator<void> {
    while (yield* this.#liftRoot()) yield;
    while (yield* this.#branch()) yield;
  }

  /** One round of floors with every switch open; false when there are no more, or nothing keeps to the limits. */
  *#liftRoot(): Generator<void, boolean> {
    const relaxed = this.#master.relax(this.#root);
    if (!relaxed) {
      this.#bound = Number.POSITIVE_INFINITY;
      return false;
    }
    this.#bound = relaxed.bound;
    this.consider(wholeSetting(relaxed.on));
    const inside = this.#inside ?? relaxed.on;
    const added = liftAt(this.#master, this.#costs, relaxed, inside);
    this.#inside = relaxed.on.map((share, index) => (share + inside[index]) / 2);
    if (added > 0) return true;
    yield* this.#improve();
    if (this.best) fixedByPrice(this.#root, relaxed, this.best.cost);
    this.#open.push({ bounds: this.#root, bound: relaxed.bound });
    return false;
  }

  /** Tries to better the best by small steps. */
  *#improve(): Generator<void> {
    if (this.best && this.best.cost > this.#bound)
      this.consider(yield* improved(this.#costs, this.#limits, this.best.setting));
  }

  /** Takes the most hopeful branch: floors, and splits it unless it is settled. False when none is left. */
  *#branch(): Generator<void, boolean> {
    const most = this.best?.cost ?? Number.POSITIVE_INFINITY;
    this.#open = this.#open.filter(({ bound }) => bound < most).sort((a, b) => b.bound - a.bound);
    const branch = this.#open.pop();
    if (!branch) {
      this.#bound = most;
      return false;
    }
    this.#branchCount++;
    this.#bound = branch.bound;
    const before = this.best;
    this.#open.push(...(yield* this.#settle(branch)));
    if (this.best !== before) yield* this.#improve();
    this.#bound = this.#open.reduce(
      (least, open) => Math.min(least, open.bound),
      this.best?.cost ?? Number.POSITIVE_INFINITY,
    );
    return true;
  }

  /** The branches that a branch leaves: none when it is settled. */
  *#settle({ bounds, bound }: Branch): Generator<void, Branch[]> {
    let lastBound = bound;
    for (let round = 1; ; round++) {
      if (round > 1) yield;
      const relaxed = this.#master.relax(bounds);
      const most = () => this.best?.cost ?? Number.POSITIVE_INFINITY;
      if (!relaxed || relaxed.bound >= most()) return [];
      const isWhole = relaxed.on.every((share) => share < 1e-9 || share > 1 - 1e-9);
      this.consider(wholeSetting(relaxed.on));
      const added = liftAt(this.#master, this.#costs, relaxed, null);
      if (added > 0 && isWhole) continue;
      if (added === 0 && isWhole && keepsTo(this.#limits, wholeSetting(relaxed.on))) return [];
      const isSlow = relaxed.bound - lastBound < WORTHWHILE_SHARE * (most() - relaxed.bound);
      lastBound = Math.max(lastBound, relaxed.bound);
      if (added > 0 && round < ROUNDS_A_BRANCH && !(isSlow && round > 1)) continue;
      if (this.best) fixedByPrice(bounds, relaxed, this.best.cost);
      return split(this.#master, bounds, relaxed)
        .map((half) => ({ ...half, bound: Math.max(half.bound, lastBound) }))
        .filter((half) => half.bound < most());
    }
  }
}
