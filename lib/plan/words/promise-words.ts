import { allOf } from "#lib/domain/listed";
import type { Loser } from "#lib/plan/road/losers";
import type { PromiseState } from "#lib/plan/road/promise-state";
import { needInWords } from "./gap-words";
import { countOf, forCount, inWholes } from "./numbers";

/** What was done, for the list of changes: "promised Ivy 120 stems", "lowered what Ivy was promised from 120 stems to 108". */
export function promiseTitle(client: string, fromStems: number, toStems: number): string {
  if (fromStems === 0) return `promised ${client} ${countOf(toStems, "stem")}`;
  const way = toStems < fromStems ? "lowered" : "raised";
  return toStems === fromStems
    ? `set out anew the ${countOf(toStems, "stem")} that ${client} was promised`
    : `${way} what ${client} was promised from ${countOf(fromStems, "stem")} to ${inWholes(toStems)}`;
}

/** How a promise stands, in a sentence. */
export function promiseInWords({
  needStems,
  promisedStems,
  coveredStems,
  brokenStems,
  moreStems,
}: PromiseState): string {
  if (promisedStems === 0)
    return coveredStems === 0
      ? "Nothing is promised, and the plan covers nothing yet."
      : `Nothing is promised yet. The plan covers ${inWholes(coveredStems)} of ${countOf(needStems, "stem")}.`;
  const promised = `${inWholes(promisedStems)} of ${countOf(needStems, "stem")} ${forCount(promisedStems, "is", "are")} promised`;
  if (brokenStems > 0) {
    const more = moreStems > 0 ? `; of other stems it has ${inWholes(moreStems)} more` : "";
    return `${promised}, and the plan has ${inWholes(brokenStems)} of them no longer${more}.`;
  }
  return moreStems > 0
    ? `${promised}; the plan covers ${inWholes(moreStems)} more.`
    : `${promised}: all that the plan covers.`;
}

/** What a booking would lose: "12 focal in blush or cream and 4 filler, any colour". */
export const lossInWords = ({ losses }: Loser, cropName: (id: number) => string): string =>
  allOf(
    losses.map(({ need, stems, promisedStems }) => {
      const broken = promisedStems > 0 ? ` (${inWholes(promisedStems)} of them promised)` : "";
      return `${inWholes(stems)} ${needInWords(need, cropName)}${broken}`;
    }),
  );
