import { type MixedIntegerSolver, type Programme, type ProgrammeRow, solveOnce } from "#lib/maths/mixed-integer";
import { SwitchCosts } from "./keep-or-dig-costs";
import { cutRow, limitRow } from "./keep-or-dig-master";
import { keepsTo, type Setting } from "./keep-or-dig-problem";
import { type Costed, type SearchProgress, searchSettings } from "./keep-or-dig-search";
import { keptIds, type WinterSeason } from "./keep-or-dig-season";

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
 * @param isStopped  asked within the count of beds, which is one long solve; once it says so the search stops as if `true` had been sent
 */
export function* fewestBeds(
  season: WinterSeason,
  solver: MixedIntegerSolver,
  isStopped: () => boolean = () => false,
): Generator<FewestProgress, FewestBeds, boolean | undefined> {
  const { openBeds, limits } = season;
  const costs = focalCosts(season);
  const none: Setting = openBeds.map(() => false);
  const starts = [none, openBeds.map(() => true)];
  const { status, best, boundCents } = yield* searchSettings(solver, costs, limits, starts, shortProgress);
  if (status !== "optimal" || !best) return answer(season, costs, status, best?.setting ?? none, boundCents);
  const trimmed = yield* fewest(season, solver, costs, best, isStopped);
  return answer(season, costs, trimmed ? "optimal" : "stopped", trimmed ?? best.setting, best.cents);
}

const shortProgress = ({ best, boundCents }: SearchProgress): FewestProgress => ({
  focalShortStems: best?.cents ?? null,
  boundShortStems: boundCents,
  keptCount: best?.setting.filter(Boolean).length ?? null,
  boundKeptCount: 0,
});

/**
 * The fewest switches on that cost no more than a setting which is known to cost least: beds are counted in the master and cuts added until
 * its answer is true. Switches part on are allowed at first, which finds most cuts for little. `null` when stopped.
 */
function* fewest(
  { limits }: WinterSeason,
  solver: MixedIntegerSolver,
  costs: SwitchCosts,
  { setting: cheapest, cents: leastCents }: Costed,
  isStopped: () => boolean,
): Generator<FewestProgress, Setting | null, boolean | undefined> {
  const switchCount = cheapest.length;
  if (switchCount === 0) return cheapest;
  const partColumns = costs.parts.map((_, part) => switchCount + part);
  const atMost = { lower: Number.NEGATIVE_INFINITY, upper: leastCents - costs.fixedCents };
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
    const { status, columns: found, objective } = solveOnce(solver, counted, isStopped);
    if (status === "stopped") return null;
    const on = Array.from(found.subarray(0, switchCount), (share) => (isWhole ? Math.round(share) : share));
    const setting = on.map((share) => share > 0.5);
    if (isWhole && keepsTo(limits, setting) && costs.cents(setting) <= leastCents) return setting;
    const lifting = costs.parts.flatMap((_, part) => {
      const { cut, cents } = costs.atPoint(part, on);
      return cents > found[switchCount + part] + 0.001 ? [cutRow(cut, costs)] : [];
    });
    rows.push(...lifting);
    if (lifting.length === 0) {
      if (isWhole) throw new RangeError("a setting that costs too much must give a cut: are all costs whole?");
      isWhole = true;
    }
    const boundKeptCount = Math.ceil(objective - 0.001);
    const keptCount = cheapest.filter(Boolean).length;
    if (yield { focalShortStems: leastCents, boundShortStems: leastCents, keptCount, boundKeptCount }) return null;
  }
}

function answer(
  season: WinterSeason,
  costs: SwitchCosts,
  status: FewestBeds["status"],
  setting: Setting,
  boundShortStems: number,
): FewestBeds {
  return {
    status,
    keptBedIds: keptIds(season, setting),
    focalNeedStems: season.futures.needs.reduce((sum, { role, stems }) => (role === "focal" ? sum + stems : sum), 0),
    focalShortStems: costs.cents(setting),
    boundShortStems: Math.max(0, Math.min(boundShortStems, costs.cents(setting))),
    noneKeptShortStems: costs.cents(setting.map(() => false)),
    allKeptShortStems: costs.cents(setting.map(() => true)),
  };
}

/** The same network with one price: a focal stem short costs 1 and all else nothing, so that a flow costs what it leaves short. */
function focalCosts({ futures, openBeds }: WinterSeason): SwitchCosts {
  const { network, needs, shifts } = futures;
  return new SwitchCosts({
    flow: network.pricedBy((index) => (needs[index].role === "focal" ? 1 : 0)),
    giverCount: network.giverCount,
    shifts: openBeds.map((bed) => shifts[bed]),
    cents: openBeds.map(() => 0),
    baseCents: 0,
  });
}
