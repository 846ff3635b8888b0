import { keepsTo, type Selection, type SwitchLimit } from "./problem";
import type { SwitchCosts } from "./switch-costs";

/**
 * Improves a selection by turning one switch, or two the opposite way, until no such step helps. The floors say beforehand what a step would
 * cost at least, so that few flows are solved: only steps that could beat the selection, the most promising first. Yields after every selection that it
 * looks at, for whoever walks it to breathe or to leave: on a large farm one step looks at thousands.
 * @param start  keeps to the limits
 */
export function* improved(
  costs: SwitchCosts,
  limits: readonly SwitchLimit[],
  start: Selection,
): Generator<void, Selection, void> {
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
  from: Selection,
): Generator<void, Selection | null, void> {
  const cost = costs.cost(from);
  const hopeful: { selection: Selection; atLeast: number }[] = [];
  for (const selection of steps(from)) {
    const atLeast = keepsTo(limits, selection) ? costs.costAtLeast(selection) : cost;
    if (atLeast < cost) hopeful.push({ selection, atLeast });
    yield;
  }
  hopeful.sort((a, b) => a.atLeast - b.atLeast);
  for (const { selection } of hopeful) {
    if (costs.costAtLeast(selection) < cost && costs.cost(selection) < cost) return selection;
    yield;
  }
  return null;
}

/** Every selection one turn away, then every swap of one that is on for one that is off. */
function* steps(from: Selection): Generator<Selection> {
  const turned = (selection: Selection, index: number) => selection.with(index, !selection[index]);
  for (const index of from.keys()) yield turned(from, index);
  const on = [...from.keys()].filter((index) => from[index]);
  const off = [...from.keys()].filter((index) => !from[index]);
  for (const out of on) for (const into of off) yield turned(turned(from, out), into);
}
