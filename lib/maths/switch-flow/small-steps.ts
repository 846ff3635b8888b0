import { keepsTo, type Setting, type SwitchLimit } from "./problem";
import type { SwitchCosts } from "./switch-costs";

/**
 * Improves a setting by turning one switch, or two the opposite way, until no such step helps. The floors say beforehand what a step would
 * cost at least, so that few flows are solved: only steps that could beat the setting, the most promising first. Yields after every setting that it
 * looks at, for whoever walks it to breathe or to leave: on a large farm one step looks at thousands.
 * @param start  keeps to the limits
 */
export function* improved(
  costs: SwitchCosts,
  limits: readonly SwitchLimit[],
  start: Setting,
): Generator<void, Setting, void> {
  let best = start;
  for (;;) {
    const better = yield* betterStep(costs, limits, best);
    if (!better) return best;
    best = better;
  }
}

function* betterStep(
  costs: SwitchCosts,
  limits: readonly SwitchLimit[],
  from: Setting,
): Generator<void, Setting | null, void> {
  const cost = costs.cost(from);
  const hopeful: { setting: Setting; atLeast: number }[] = [];
  for (const setting of steps(from)) {
    const atLeast = keepsTo(limits, setting) ? costs.costAtLeast(setting) : cost;
    if (atLeast < cost) hopeful.push({ setting, atLeast });
    yield;
  }
  hopeful.sort((a, b) => a.atLeast - b.atLeast);
  for (const { setting } of hopeful) {
    if (costs.costAtLeast(setting) < cost && costs.cost(setting) < cost) return setting;
    yield;
  }
  return null;
}

/** Every setting one turn away, then every swap of one that is on for one that is off. */
function* steps(from: Setting): Generator<Setting> {
  const turned = (setting: Setting, index: number) => setting.with(index, !setting[index]);
  for (const index of from.keys()) yield turned(from, index);
  const on = [...from.keys()].filter((index) => from[index]);
  const off = [...from.keys()].filter((index) => !from[index]);
  for (const out of on) for (const into of off) yield turned(turned(from, out), into);
}
