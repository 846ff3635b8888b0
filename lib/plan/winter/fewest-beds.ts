import { type MixedIntegerSolver, type Programme, type ProgrammeRow, solveOnce } from "#lib/maths/mixed-integer";
import { floorRow, limitRow } from "#lib/maths/switch-flow/master";
import { keepsTo, type Selection } from "#lib/maths/switch-flow/problem";
import { type Costed, type SearchProgress, searchSelections } from "#lib/maths/switch-flow/search";
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

/** How far it has come: stems short and beds of the best so far (null until one keeps to the limits), and the fewest stems and beds that can be. */
export type FewestProgress = {
  readonly focalShortStems: number | null;
  readonly boundShortStems: number;
  readonly keptCount: number | null;
  readonly boundKeptCount: number;
};

/**
 * Finds first the least stems short, then the fewest beds that leave no more. Yields its progress; send `true` to stop with the best so far.
 * The count of beds is one long solve: a solver that ends it as `stopped` stops the search too.
 */
export function* fewestBeds(
  season: WinterSeason,
  solver: MixedIntegerSolver,
): Generator<FewestProgress, FewestBeds, boolean | undefined> {
  const { openBeds, limits } = season;
  const costs = focalCosts(season);
  const none: Selection = openBeds.map(() => false);
  const starts = [none, openBeds.map(() => true)];
  const { status, best, bound } = yield* searchSelections(solver, costs, limits, starts, shortProgress);
  if (status !== "optimal" || !best) return answer(season, costs, status, best?.selection ?? none, bound);
  const trimmed = yield* fewest(season, solver, costs, best);
  return answer(season, costs, trimmed ? "optimal" : "stopped", trimmed ?? best.selection, best.cost);
}

const shortProgress = ({ best, bound }: SearchProgress): FewestProgress => ({
  focalShortStems: best?.cost ?? null,
  boundShortStems: bound,
  keptCount: best?.selection.filter(Boolean).length ?? null,
  boundKeptCount: 0,
});

/**
 * The fewest switches on that cost no more than a selection which is known to cost least: beds are counted in the master and floors added until
 * its answer is true. Switches part on are allowed at first, which finds most floors for little. `null` when stopped.
 */
function* fewest(
  { limits }: WinterSeason,
  solver: MixedIntegerSolver,
  costs: SwitchCosts,
  { selection: cheapest, cost: leastShort }: Costed,
): Generator<FewestProgress, Selection | null, boolean | undefined> {
  const switchCount = cheapest.length;
  if (switchCount === 0) return cheapest;
  const partColumns = costs.parts.map((_, part) => switchCount + part);
  const atMost = { lower: Number.NEGATIVE_INFINITY, upper: leastShort - costs.fixedCost };
  const budget: ProgrammeRow = { ...atMost, columns: partColumns, coefficients: partColumns.map(() => 1) };
  const rows = [...limits.map(limitRow), ...(partColumns.length ? [budget] : [])];
  for (let isWhole = false; ; ) {
    const columns = [...cheapest, ...costs.parts];
    const counted: Programme = {
      costs: columns.map((_, column) => (column < switchCount ? 1 : 0)),
      lowers: columns.map(() => 0),
      uppers: columns.map((_, column) => (column < switchCount ? 1 : Number.POSITIVE_INFINITY)),
      isWhole: columns.map((_, column) => isWhole && column < switchCount),
      rows,
    };
    const { status, columns: found, objective } = solveOnce(solver, counted);
    if (status === "stopped") return null;
    const on = Array.from(found.subarray(0, switchCount), (share) => (isWhole ? Math.round(share) : share));
    const selection = on.map((share) => share > 0.5);
    if (isWhole && keepsTo(limits, selection) && costs.cost(selection) <= leastShort) return selection;
    const lifting = costs.parts.flatMap((_, part) => {
      const { floor, cost } = costs.atPoint(part, on);
      return cost > found[switchCount + part] + 0.001 ? [floorRow(floor, costs)] : [];
    });
    rows.push(...lifting);
    if (lifting.length === 0) {
      if (isWhole) throw new RangeError("a selection that costs too much must give a floor: are all costs whole?");
      isWhole = true;
    }
    const boundKeptCount = Math.ceil(objective - 0.001);
    const keptCount = cheapest.filter(Boolean).length;
    if (yield { focalShortStems: leastShort, boundShortStems: leastShort, keptCount, boundKeptCount }) return null;
  }
}

function answer(
  season: WinterSeason,
  costs: SwitchCosts,
  status: FewestBeds["status"],
  selection: Selection,
  boundShortStems: number,
): FewestBeds {
  return {
    status,
    keptBedIds: keptIds(season, selection),
    focalNeedStems: season.futures.needs.reduce(
      (sum, need) => (isFocalOf(season.futures.seasonYear, need) ? sum + need.stems : sum),
      0,
    ),
    focalShortStems: costs.cost(selection),
    boundShortStems: Math.max(0, Math.min(boundShortStems, costs.cost(selection))),
    noneKeptShortStems: costs.cost(selection.map(() => false)),
    allKeptShortStems: costs.cost(selection.map(() => true)),
  };
}

/** The same network with one price: a focal stem short costs 1 and all else nothing, so that a flow costs what it leaves short. */
function focalCosts({ futures, openBeds }: WinterSeason): SwitchCosts {
  const { network, needs, effects, seasonYear } = futures;
  return new SwitchCosts({
    flow: network.pricedBy((index) => (isFocalOf(seasonYear, needs[index]) ? 1 : 0)),
    giverCount: network.giverCount,
    effects: openBeds.map((bed) => effects[bed]),
    switchCost: openBeds.map(() => 0),
    baseCost: 0,
  });
}
