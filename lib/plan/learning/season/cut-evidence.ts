import { chanceOfAtLeast, logChanceOf } from "#lib/maths/negative-binomial";
import { type CutSeen, DISPERSION, UNTRUSTED_SHARE } from "./season-model";

/** The size of the negative binomial distribution that spreads stems ready about their mean by the dispersion. */
export const SIZE = 1 / DISPERSION ** 2;

/** An untrusted record says any count up to about a thousand as gladly as another. */
const ANY_COUNT = 1e-3;

const STEPS = 256;

/**
 * The logarithm of the chance of what a cut says, as a function of the stems expected ready [O2]. A cut of all that was ready measures; one that filled its list
 * says only that there were at least so many.
 */
export function cutEvidence({ stems, says }: Pick<CutSeen, "stems" | "says">): (expectedStems: number) => number {
  const logChance = says === "at least" ? null : logChanceOf(stems, SIZE);
  const least = logChance === null ? atLeast(stems) : null;
  return (expected) => {
    if (least) return Math.log(UNTRUSTED_SHARE + (1 - UNTRUSTED_SHARE) * least(expected));
    const trusted = Math.exp(logChance?.(expected) ?? 0);
    return Math.log(UNTRUSTED_SHARE * ANY_COUNT + (1 - UNTRUSTED_SHARE) * trusted);
  };
}

/** Chances of at least so many stems, by count: tabulated over mean / (mean + size), straight between. Few counts are ever cut. */
const tables = new Map<number, Float64Array>();

function atLeast(stems: number): (expected: number) => number {
  const found =
    tables.get(stems) ?? Float64Array.from({ length: STEPS + 1 }, (_, step) => tableAt(stems, step / STEPS));
  if (tables.size < 10_000) tables.set(stems, found);
  return (expected) => {
    const place = (expected / (expected + SIZE)) * STEPS;
    const step = Math.min(STEPS - 1, Math.floor(place));
    return found[step] + (place - step) * (found[step + 1] - found[step]);
  };
}

const tableAt = (stems: number, share: number): number =>
  share >= 1 ? 1 : chanceOfAtLeast(stems, (share * SIZE) / (1 - share), SIZE);
