import { isSure, openSwitches, type SwitchBounds, withBound } from "./bounds";
import type { Master, Relaxed } from "./master";

/** Switches that a branch may split on: so many of those nearest to half on are tried; by trial. */
const TRIED_COUNT = 6;
/** A half that gains less still counts for so much, so that the other half can tell splits apart. */
const LEAST_GAIN = 0.001;

/** A half of a branch and what the relaxation says of it. */
export type Half = { readonly bounds: SwitchBounds; readonly relaxed: Relaxed };

/** A switch to split a branch on, and the halves in which it is off and on. */
export type Split = { readonly index: number; readonly off: Half; readonly on: Half };

/**
 * The split whose two halves, tried out, raise the bound the most: one on a switch whose other half allows nothing is best of all.
 * Some switch must be open.
 */
export function bestSplit(master: Master, bounds: SwitchBounds, { on, about }: NonNullable<Relaxed>): Split {
  const unsure = (index: number) => Math.abs(on[index] - 0.5);
  const [first, ...others] = openSwitches(bounds)
    .sort((a, b) => unsure(a) - unsure(b) || a - b)
    .slice(0, TRIED_COUNT);
  let best = halves(master, bounds, first);
  let bestScore = score(best, about);
  for (const index of others) {
    if (isSure(on[index])) break;
    const split = halves(master, bounds, index);
    if (score(split, about) <= bestScore) continue;
    best = split;
    bestScore = score(split, about);
  }
  return best;
}

/** The halves of a branch split on a switch. */
export function halves(master: Master, bounds: SwitchBounds, index: number): Split {
  const [off, on] = [0, 1].map((value) => {
    const half = withBound(bounds, index, value);
    return { bounds: half, relaxed: master.relax(half) };
  });
  return { index, off, on };
}

function score({ off, on }: Split, about: number): number {
  if (!off.relaxed || !on.relaxed) return Number.POSITIVE_INFINITY;
  return Math.max(LEAST_GAIN, off.relaxed.about - about) * Math.max(LEAST_GAIN, on.relaxed.about - about);
}
