import type { MixedIntegerSolver } from "#lib/maths/mixed-integer";
import { type ChoiceProgress, choiceProgress } from "./keep-or-dig";
import { SwitchCosts } from "./keep-or-dig-costs";
import type { Setting } from "./keep-or-dig-problem";
import { searchSettings } from "./keep-or-dig-search";
import { keptIds, type WinterSeason } from "./keep-or-dig-season";

/**
 * The fewest beds that leave the least possible focal stems short, whatever they cost, focal needs served before all others [K5].
 * `focalShortStems` is proven least when `optimal`; when `stopped`, no choice leaves fewer than `boundShortStems` short. Beside it what
 * is short with no bed kept and with every bed kept that has no flag, limits or not: what is left even then no winter bed can cover.
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

/** Finds the fewest beds. Yields its progress, in which a cent stands for a bed and `candidates + 1` for a stem short; send `true` to stop. */
export function* fewestBeds(
  season: WinterSeason,
  solver: MixedIntegerSolver,
): Generator<ChoiceProgress, FewestBeds, boolean | undefined> {
  const { openBeds, limits, futures } = season;
  const perStem = openBeds.length + 1;
  const costs = focalCosts(season, perStem);
  const none = openBeds.map(() => false);
  const all = openBeds.map(() => true);
  const search = searchSettings(solver, costs, limits, [none, all]);
  let step = search.next();
  while (!step.done) step = search.next(yield choiceProgress(step.value));
  const { status, best, boundCents } = step.value;
  const shortOf = (setting: Setting) => Math.floor(costs.cents(setting) / perStem);
  return {
    status,
    keptBedIds: best ? keptIds(season, best.setting) : [],
    focalNeedStems: futures.needs.reduce((sum, { role, stems }) => (role === "focal" ? sum + stems : sum), 0),
    focalShortStems: shortOf(best?.setting ?? none),
    boundShortStems: Math.max(0, Math.floor(Math.min(boundCents, best?.cents ?? boundCents) / perStem)),
    noneKeptShortStems: shortOf(none),
    allKeptShortStems: shortOf(all),
  };
}

/** The same network with one price: a focal stem short costs more than all the beds together, a bed kept costs 1, and all else nothing. */
function focalCosts({ futures, openBeds }: WinterSeason, perStem: number): SwitchCosts {
  const { network, needs, shifts } = futures;
  const { flow, firstNeed, firstPassage } = network;
  const unmetCost = new Int32Array(flow.nodeCount);
  needs.forEach(({ role }, index) => {
    unmetCost[firstNeed + index] = role === "focal" ? perStem : 0;
  });
  return new SwitchCosts({
    flow: { ...flow, cost: new Int32Array(flow.arcCount), unmetCost },
    giverCount: firstPassage,
    shifts: openBeds.map((bed) => shifts[bed]),
    cents: openBeds.map(() => 1),
    baseCents: 0,
  });
}
