import type { Band } from "#lib/plan/chance/simulation-summary";
import { inWholes } from "#lib/plan/words/numbers";

/** Of sampled seasons: one in ten leaves fewer than the low, nine in ten fewer than the high. */
export const bandInWords = ({ low, likely, high }: Band): string =>
  `Over many seasons: in a poor one ${inWholes(low)}, most likely ${inWholes(likely)}, in a good one ${inWholes(high)} left.`;

/** "40 to 120" */
export const bandInShort = ({ low, high }: Band): string => `${inWholes(low)} to ${inWholes(high)}`;
