import type { MixedIntegerSolver } from "#lib/maths/mixed-integer";
import { fixedByPrice, openBounds, type SwitchBounds, split, wholeSetting } from "./keep-or-dig-branches";
import type { SwitchCosts } from "./keep-or-dig-costs";
import { improved } from "./keep-or-dig-local";
import { cutOff, Master } from "./keep-or-dig-master";
import { keepsTo, type Setting, type SwitchLimit } from "./keep-or-dig-problem";

/** A setting and what it costs. */
export type Costed = { readonly setting: Setting; readonly cents: number };

/** How far a search has come. `best` is null until a setting that keeps to the limits is found; no setting costs less than `boundCents`. */
export type SearchProgress = {
  readonly best: Costed | null;
  readonly boundCents: number;
  readonly cutCount: number;
  readonly branchCount: number;
  readonly openBranchCount: number;
};

/** `optimal`: the best costs what the bound says, to the cent. `infeasible`: no setting keeps to the limits. */
export type SearchEnd = SearchProgress & { readonly status: "optimal" | "stopped" | "infeasible" };

type Branch = { readonly bounds: SwitchBounds; readonly boundCents: number };

/** Rounds of cuts at a branch before it is split; our own setting, by trial. */
const ROUNDS_A_BRANCH = 5;
/** A round must lift the bound by this share of what is left to prove, or the branch is split at once; by trial too. */
const WORTHWHILE_SHARE = 0.02;

/**
 * Finds the cheapest setting that keeps to the limits, and proves it: branch and bound over the relaxed master, with cuts wherever it is
 * too hopeful. Yields after every round of cuts and every setting that is looked at on the way, so that no step solves more than a few
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
  if (costs.problem.cents.length === 0) return onlySetting(costs, limits);
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
  const done = { cutCount: 0, branchCount: 0, openBranchCount: 0 };
  if (!keepsTo(limits, [])) return { ...done, status: "infeasible", best: null, boundCents: Number.POSITIVE_INFINITY };
  const cents = costs.cents([]);
  return { ...done, status: "optimal", best: { setting: [], cents }, boundCents: cents };
}

class Search {
  best: Costed | null = null;
  #boundCents = Number.NEGATIVE_INFINITY;
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
    this.#root = openBounds(costs.problem.cents.length);
  }

  close = (): void => this.#master.close();

  progress(): SearchProgress {
    const bestCents = this.best?.cents ?? Number.POSITIVE_INFINITY;
    return {
      best: this.best,
      boundCents: Math.min(bestCents, this.#boundCents),
      cutCount: this.#master.cutCount,
      branchCount: this.#branchCount,
      openBranchCount: this.#open.length,
    };
  }

  consider(setting: Setting): void {
    if (!keepsTo(this.#limits, setting)) return;
    const cents = this.#costs.cents(setting);
    if (!this.best || cents < this.best.cents) this.best = { setting, cents };
  }

  /** The whole search. Between any two steps the best and the bound hold. */
  *steps(): Generator<void> {
    while (yield* this.#cutRoot()) yield;
    while (yield* this.#branch()) yield;
  }

  /** One round of cuts with every switch open; false when there are no more, or nothing keeps to the limits. */
  *#cutRoot(): Generator<void, boolean> {
    const relaxed = this.#master.relax(this.#root);
    if (!relaxed) {
      this.#boundCents = Number.POSITIVE_INFINITY;
      return false;
    }
    this.#boundCents = relaxed.boundCents;
    this.consider(wholeSetting(relaxed.on));
    const inside = this.#inside ?? relaxed.on;
    const added = cutOff(this.#master, this.#costs, relaxed, inside);
    this.#inside = relaxed.on.map((share, index) => (share + inside[index]) / 2);
    if (added > 0) return true;
    yield* this.#improve();
    if (this.best) fixedByPrice(this.#root, relaxed, this.best.cents);
    this.#open.push({ bounds: this.#root, boundCents: relaxed.boundCents });
    return false;
  }

  /** Tries to better the best by small steps. */
  *#improve(): Generator<void> {
    if (this.best && this.best.cents > this.#boundCents)
      this.consider(yield* improved(this.#costs, this.#limits, this.best.setting));
  }

  /** Takes the most hopeful branch: cuts, and splits it unless it is settled. False when none is left. */
  *#branch(): Generator<void, boolean> {
    const most = this.best?.cents ?? Number.POSITIVE_INFINITY;
    this.#open = this.#open.filter(({ boundCents }) => boundCents < most).sort((a, b) => b.boundCents - a.boundCents);
    const branch = this.#open.pop();
    if (!branch) {
      this.#boundCents = most;
      return false;
    }
    this.#branchCount++;
    this.#boundCents = branch.boundCents;
    const before = this.best;
    this.#open.push(...(yield* this.#settle(branch)));
    if (this.best !== before) yield* this.#improve();
    this.#boundCents = this.#open.reduce(
      (least, open) => Math.min(least, open.boundCents),
      this.best?.cents ?? Number.POSITIVE_INFINITY,
    );
    return true;
  }

  /** The branches that a branch leaves: none when it is settled. */
  *#settle({ bounds, boundCents }: Branch): Generator<void, Branch[]> {
    let lastCents = boundCents;
    for (let round = 1; ; round++) {
      if (round > 1) yield;
      const relaxed = this.#master.relax(bounds);
      const most = () => this.best?.cents ?? Number.POSITIVE_INFINITY;
      if (!relaxed || relaxed.boundCents >= most()) return [];
      const isWhole = relaxed.on.every((share) => share < 1e-9 || share > 1 - 1e-9);
      this.consider(wholeSetting(relaxed.on));
      const added = cutOff(this.#master, this.#costs, relaxed, null);
      if (added > 0 && isWhole) continue;
      if (added === 0 && isWhole && keepsTo(this.#limits, wholeSetting(relaxed.on))) return [];
      const isSlow = relaxed.boundCents - lastCents < WORTHWHILE_SHARE * (most() - relaxed.boundCents);
      lastCents = Math.max(lastCents, relaxed.boundCents);
      if (added > 0 && round < ROUNDS_A_BRANCH && !(isSlow && round > 1)) continue;
      if (this.best) fixedByPrice(bounds, relaxed, this.best.cents);
      return split(this.#master, bounds, relaxed)
        .map((half) => ({ ...half, boundCents: Math.max(half.boundCents, lastCents) }))
        .filter((half) => half.boundCents < most());
    }
  }
}
