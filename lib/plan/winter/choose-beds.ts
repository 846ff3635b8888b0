import type { Snapshot } from "#lib/domain/snapshot";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { type Selection, weightOf } from "#lib/maths/switch-flow/problem";
import { type SearchEnd, type SearchProgress, searchSelections } from "#lib/maths/switch-flow/search";
import { type LimitMet, limitMet } from "./limits";
import { fates, focalShortStems, keptIds, type WinterSeason, winterSeason } from "./season";

/** How far the choice has come: the best plan so far (null until one keeps to the limits), and what no plan can beat. */
export type ChoiceProgress = {
  readonly bestCents: number | null;
  readonly boundCents: number;
  readonly keptCount: number;
  readonly branchCount: number;
};

/**
 * A choice of beds in money and in what it takes, every candidate bed reckoned. `totalCents` is what is least:
 * `buyInCents` (stems short at their expected price) + `brokenCents` (what is lost by the `brokenStems`, promised ones, among them) + `fitCents` (what poorer fits and older stems are worth) + `winterCents`, and
 * `winterCents` = labour + material + replacement + free bed. All cents are whole.
 */
export type ChosenBeds = {
  readonly keptBedIds: readonly number[];
  readonly totalCents: number;
  readonly buyInCents: number;
  readonly brokenStems: number;
  readonly brokenCents: number;
  readonly fitCents: number;
  readonly winterCents: number;
  readonly labourCents: number;
  readonly materialCents: number;
  readonly replacementCents: number;
  readonly freeBedCents: number;
  readonly hours: number;
  readonly leafCubicMetres: number;
  readonly tarpSquareMetres: number;
  readonly focalShortStems: number;
};

/**
 * What the choice can honestly say [K4]. `optimal`: no choice is cheaper, to the cent. `stopped`: the best found, and no choice can beat
 * `boundCents`. `stopped early`: none was found yet that keeps to the limits. `infeasible`: none does, because of these.
 */
export type WinterChoice =
  | (ChosenBeds & { readonly status: "optimal" | "stopped"; readonly boundCents: number })
  | { readonly status: "stopped early"; readonly boundCents: number }
  | { readonly status: "infeasible"; readonly because: readonly LimitMet[] };

/** A choice with the search that proves it (`checkChoice`). */
export type ProvenChoice = { readonly choice: WinterChoice; readonly search: SearchEnd };

/**
 * Chooses which beds of tender perennials stay in the ground, so that expected buy-in, labour, materials and replacement are least, with
 * the whole match inside. Yields its progress; send `true` to stop it. Flags overrule the sum [K2], limits are kept [K3].
 * @param season  what was made before for the same snapshot and year, if it was
 */
export function* chooseBeds(
  snapshot: Snapshot,
  seasonYear: number,
  solver: LinearSolver,
  season: WinterSeason = winterSeason(snapshot, seasonYear),
): Generator<ChoiceProgress, WinterChoice, boolean | undefined> {
  return (yield* provenChoice(season, solver)).choice;
}

/** The same choice with its proof. */
export function* provenChoice(
  season: WinterSeason,
  solver: LinearSolver,
): Generator<ChoiceProgress, ProvenChoice, boolean | undefined> {
  const { costs, limits, openBeds } = season;
  const allDug = openBeds.map(() => false);
  const search = yield* searchSelections(solver, costs, limits, [allDug], choiceProgress);
  return { search, choice: choiceOf(season, search) };
}

function choiceOf(season: WinterSeason, { status, best, bound }: SearchEnd): WinterChoice {
  if (status === "infeasible") return { status, because: broken(season) };
  if (!best) return { status: "stopped early", boundCents: bound };
  return { status, boundCents: bound, ...chosenBeds(season, best.selection) };
}

/** Runs a search to its end, without a stop. */
export function finished<End>(search: Generator<unknown, End, boolean | undefined>): End {
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

const choiceProgress = ({ best, bound, branchCount }: SearchProgress): ChoiceProgress => ({
  bestCents: best?.cost ?? null,
  keptCount: best?.selection.filter(Boolean).length ?? 0,
  boundCents: bound,
  branchCount,
});

/** What a choice costs and takes, over every candidate bed. */
export function chosenBeds(season: WinterSeason, selection: Selection): ChosenBeds {
  const { futures } = season;
  const isKept = fates(season, selection);
  const costs = futures.beds.map(({ keep, dig }, bed) => (isKept[bed] ? keep : dig));
  const sum = (of: (cost: (typeof costs)[number]) => number) => costs.reduce((total, cost) => total + of(cost), 0);
  const flow = season.flowOf(isKept);
  const { needs, network } = futures;
  const { brokenStems, brokenCents } = network.broken(flow);
  const shortCents = needs.reduce((cents, _, index) => cents + network.shortCentsOf(index, flow), 0);
  const winterCents = sum(({ cents }) => cents);
  return {
    keptBedIds: keptIds(season, selection),
    totalCents: flow.totalCost + winterCents,
    buyInCents: shortCents - brokenCents,
    brokenStems,
    brokenCents,
    fitCents: flow.totalCost - shortCents,
    winterCents,
    labourCents: sum((cost) => cost.labourCents),
    materialCents: sum((cost) => cost.materialCents),
    replacementCents: sum((cost) => cost.replacementCents),
    freeBedCents: sum((cost) => cost.freeBedCents),
    hours: sum((cost) => cost.hours),
    leafCubicMetres: sum((cost) => cost.leafCubicMetres),
    tarpSquareMetres: sum((cost) => cost.tarpSquareMetres),
    focalShortStems: focalShortStems(futures, flow),
  };
}

/** The limits that no choice can keep even by itself, each with the least that any choice takes; all of them when only together they cannot be kept. */
function broken(season: WinterSeason): LimitMet[] {
  const { limits, openBeds, futures } = season;
  const lightest = (weights: readonly bigint[]) => openBeds.map((_, index) => weights[index] < 0n);
  const hopeless = limits.filter((limit) => weightOf(limit, lightest(limit.weights)) > limit.atMost);
  return (hopeless.length ? hopeless : limits).map((limit) =>
    limitMet(limit, futures.beds, fates(season, lightest(limit.weights))),
  );
}
