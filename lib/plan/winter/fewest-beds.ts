import type { LinearSolver } from "#lib/maths/linear-programme";
import { type SearchEnd, type SearchProgress, searchSelections } from "#lib/maths/switch-flow/search";
import { SwitchCosts } from "#lib/maths/switch-flow/switch-costs";
import { isFocalOf, keptIds, type WinterSeason } from "./season";

/**
 * The fewest beds that leave the least possible focal stems short, whatever they cost, focal needs served before all others [K5].
 * `optimal`: no choice within the limits leaves fewer than `focalShortStems`, and none of fewer beds as few. `stopped`: the best found; none
 * leaves fewer than `boundShortStems`. Beside it what is short with no bed kept, and with every bed kept that has no flag, limits
 * or not: what is left even then shows how much winter beds can do.
 */
export type FewestBeds = {
  readonly status: "optimal" | "stopped" | "infeasible";
  readonly keptBedIds: readonly number[];
  readonly focalNeedStems: number;
  readonly focalShortStems: number;
  readonly boundShortStems: number;
  readonly noneKeptShortStems: number;
  readonly allKeptShortStems: number;
};

/** How far it has come: stems short and beds of the best so far (null until one keeps to the limits), and the fewest stems and, with those, beds that can be. */
export type FewestProgress = {
  readonly focalShortStems: number | null;
  readonly boundShortStems: number;
  readonly keptCount: number | null;
  readonly boundKeptCount: number;
};

/** The fewest beds with the search that proves them (`checkFewest`). */
export type ProvenFewest = { readonly fewest: FewestBeds; readonly search: SearchEnd };

/**
 * Finds the least stems short and, with those, the fewest beds, in one search. Yields its progress; send `true` to stop with the best so far.
 */
export function* fewestBeds(
  season: WinterSeason,
  solver: LinearSolver,
): Generator<FewestProgress, FewestBeds, boolean | undefined> {
  return (yield* provenFewest(season, solver)).fewest;
}

/** The same beds with their proof. */
export function* provenFewest(
  season: WinterSeason,
  solver: LinearSolver,
): Generator<FewestProgress, ProvenFewest, boolean | undefined> {
  const { openBeds, limits } = season;
  const costs = fewestCosts(season);
  const [none, all] = [false, true].map((isKept) => openBeds.map(() => isKept));
  const search = yield* searchSelections(solver, costs, limits, [none], ({ best, bound }: SearchProgress) => ({
    focalShortStems: best && shortOf(season, best.cost),
    boundShortStems: shortOf(season, bound),
    keptCount: best?.selection.filter(Boolean).length ?? null,
    boundKeptCount: bound % stemWeight(season),
  }));
  const { status, best, bound } = search;
  const { needs, seasonYear } = season.futures;
  const selection = best?.selection ?? none;
  const focalShortStems = shortOf(season, costs.cost(selection));
  const fewest: FewestBeds = {
    status,
    keptBedIds: keptIds(season, selection),
    focalNeedStems: needs.reduce((sum, need) => (isFocalOf(seasonYear, need) ? sum + need.stems : sum), 0),
    focalShortStems,
    boundShortStems: Math.min(shortOf(season, bound), focalShortStems),
    noneKeptShortStems: shortOf(season, costs.cost(none)),
    allKeptShortStems: shortOf(season, costs.cost(all)),
  };
  return { fewest, search };
}

/** A focal stem short weighs more than all beds together, so that the least sum has first the least short and then the fewest beds. */
const stemWeight = ({ openBeds }: WinterSeason): number => openBeds.length + 1;

const shortOf = (season: WinterSeason, cost: number): number => Math.max(0, Math.floor(cost / stemWeight(season)));

/** The same network where a focal stem short costs its weight, a bed kept 1, and all else nothing. */
export function fewestCosts(season: WinterSeason): SwitchCosts {
  const { openBeds, futures } = season;
  const { network, needs, effects, seasonYear } = futures;
  return new SwitchCosts({
    flow: network.pricedBy((index) => (isFocalOf(seasonYear, needs[index]) ? stemWeight(season) : 0)),
    giverCount: network.giverCount,
    effects: openBeds.map((bed) => effects[bed]),
    switchCost: openBeds.map(() => 1),
    baseCost: 0,
  });
}
