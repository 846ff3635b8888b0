import type { SwitchCosts } from "./keep-or-dig-costs";
import { keepsTo, type Setting, type SwitchLimit } from "./keep-or-dig-problem";

/**
 * Improves a setting by turning one switch, or two the opposite way, until no such step helps. The cuts say beforehand what a step would
 * cost at least, so that few flows are solved: only steps that could beat the setting, the most promising first.
 * @param start  keeps to the limits
 */
export function improved(costs: SwitchCosts, limits: readonly SwitchLimit[], start: Setting): Setting {
  let best = start;
  for (;;) {
    const better = betterStep(costs, limits, best);
    if (!better) return best;
    best = better;
  }
}

function betterStep(costs: SwitchCosts, limits: readonly SwitchLimit[], from: Setting): Setting | undefined {
  const cents = costs.cents(from);
  const hopeful = steps(from)
    .filter((setting) => keepsTo(limits, setting))
    .map((setting) => ({ setting, atLeast: costs.centsAtLeast(setting) }))
    .filter(({ atLeast }) => atLeast < cents)
    .sort((a, b) => a.atLeast - b.atLeast);
  return hopeful.find(({ setting }) => costs.centsAtLeast(setting) < cents && costs.cents(setting) < cents)?.setting;
}

/** Every setting one turn away, then every swap of one that is on for one that is off. */
function steps(from: Setting): Setting[] {
  const turned = (setting: Setting, index: number) => setting.with(index, !setting[index]);
  const single = from.map((_, index) => turned(from, index));
  const on = [...from.keys()].filter((index) => from[index]);
  const off = [...from.keys()].filter((index) => !from[index]);
  return [...single, ...on.flatMap((out) => off.map((into) => turned(turned(from, out), into)))];
}
