import type { Surplus } from "#lib/plan/road/surplus";
import { countOf } from "./numbers";

const stemsOf = (lots: readonly Surplus[]): number => lots.reduce((sum, { stems }) => sum + stems, 0);

/** What is left over and no surplus [S2], as a sentence; null where nothing is. */
export function notWorthCutting(over: readonly Surplus[], surplus: readonly Surplus[]): string | null {
  const stems = stemsOf(over) - stemsOf(surplus);
  return stems === 0
    ? null
    : `Beside them ${countOf(stems, "stem")} will bloom too few at a time to make a bunch of one crop and colour: nobody would cut them.`;
}
