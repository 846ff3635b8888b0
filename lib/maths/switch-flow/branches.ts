import type { Master, Relaxed } from "./master";
import type { Setting } from "./problem";

/** Bounds on each switch: 0 and 1 leave it open, both the same bind it. */
export type SwitchBounds = { readonly lowers: Uint8Array; readonly uppers: Uint8Array };

export const openBounds = (switchCount: number): SwitchBounds => ({
  lowers: new Uint8Array(switchCount),
  uppers: new Uint8Array(switchCount).fill(1),
});

/** The nearest setting to one with switches part on. */
export const wholeSetting = (on: ArrayLike<number>): Setting => Array.from(on, (share) => share > 0.5);

/** Switches that a branch may split on: so many of those nearest to half on are tried; by trial. */
const TRIED_COUNT = 6;

/**
 * Binds, in place, every switch that would cost more than the best setting if it were turned against the relaxation. Costs are whole
 * numbers, so what is not cheaper by one is no better.
 */
export function fixedByPrice(bounds: SwitchBounds, relaxed: NonNullable<Relaxed>, bestCost: number): void {
  const gap = bestCost - relaxed.bound + 0.02;
  relaxed.on.forEach((share, index) => {
    if (bounds.lowers[index] === bounds.uppers[index]) return;
    if (share < 1e-9 && relaxed.reducedCosts[index] >= gap) bounds.uppers[index] = 0;
    if (share > 1 - 1e-9 && -relaxed.reducedCosts[index] >= gap) bounds.lowers[index] = 1;
  });
}

/**
 * Splits a branch on the switch whose two halves, tried out, raise the bound the most: on in one, off in the other. A half in which
 * nothing keeps to the limits is left out.
 */
export function split(master: Master, bounds: SwitchBounds, relaxed: NonNullable<Relaxed>) {
  const open = [...bounds.lowers.keys()].filter((index) => bounds.lowers[index] < bounds.uppers[index]);
  const unsure = (index: number) => Math.abs(relaxed.on[index] - 0.5);
  const tried = open.sort((a, b) => unsure(a) - unsure(b) || a - b).slice(0, TRIED_COUNT);
  let best: ReturnType<typeof halves> = [];
  let bestScore = Number.NEGATIVE_INFINITY;
  for (const index of tried) {
    if (bestScore > Number.NEGATIVE_INFINITY && (relaxed.on[index] < 1e-9 || relaxed.on[index] > 1 - 1e-9)) break;
    const both = halves(master, bounds, index);
    const [first, second] = both.map(({ bound }) => Math.max(1, bound - relaxed.bound));
    const score = both.length < 2 ? Number.POSITIVE_INFINITY : first * second;
    if (score > bestScore) {
      bestScore = score;
      best = both;
    }
  }
  return best;
}

function halves(master: Master, bounds: SwitchBounds, index: number): { bounds: SwitchBounds; bound: number }[] {
  return [0, 1].flatMap((value) => {
    const half = { lowers: bounds.lowers.slice(), uppers: bounds.uppers.slice() };
    half.lowers[index] = value;
    half.uppers[index] = value;
    const relaxed = master.relax(half);
    return relaxed ? [{ bounds: half, bound: relaxed.bound }] : [];
  });
}
