import type { RowCut, RowToCut } from "#lib/plan/road/day-to-cut";
import { countOf, inWholes } from "./numbers";

const sumOf = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);

/** "Cut 97 stems in 8 rows; 40 are recorded." Says of a day that has passed what counts as cut as planned. */
export function cutSumInWords(
  open: readonly Pick<RowToCut, "stemsToCut">[],
  done: readonly Pick<RowCut, "stemsCut">[],
  isToday: boolean,
): string {
  const left = sumOf(open.map(({ stemsToCut }) => stemsToCut));
  const cut = sumOf(done.map(({ stemsCut }) => stemsCut));
  const recorded = done.length > 0 ? `${countOf(cut, "stem")} recorded as cut` : "";
  if (left === 0 && !recorded) return isToday ? "Nothing to cut today." : "Nothing was to be cut.";
  if (left === 0) return `All done: ${recorded}.`;
  const asked = isToday
    ? `Cut ${countOf(left, "stem")} in ${countOf(open.length, "row")}`
    : `${countOf(left, "stem")} in ${countOf(open.length, "row")} not recorded`;
  return recorded ? `${asked}; ${recorded}.` : `${asked}.`;
}

/** "9 cut, as asked", "7 of 9 cut", "12 cut, 3 more than asked", "none left of 9", "5 cut", "7 of 9 cut, the rest waits". */
export function rowCutInWords({
  stemsCut,
  stemsAsked,
  restStands,
}: Omit<RowCut, "place" | "variety" | "crop" | "cuts">): string {
  if (restStands && (stemsAsked === null || stemsCut < stemsAsked))
    return `${stemsCut === 0 ? "none" : inWholes(stemsCut)}${stemsAsked === null ? "" : ` of ${inWholes(stemsAsked)}`} cut, the rest waits`;
  if (stemsAsked === null) return `${inWholes(stemsCut)} cut`;
  if (stemsCut === 0 && stemsAsked > 0) return `none left of ${inWholes(stemsAsked)}`;
  if (stemsCut < stemsAsked) return `${inWholes(stemsCut)} of ${inWholes(stemsAsked)} cut`;
  return stemsCut === stemsAsked
    ? `${inWholes(stemsCut)} cut, as asked`
    : `${inWholes(stemsCut)} cut, ${inWholes(stemsCut - stemsAsked)} more than asked`;
}

/** "all 120 stems cut or still to come", "12 of 120 stems short" */
export const soonInWords = (needStems: number, shortStems: number): string =>
  shortStems === 0
    ? `all ${countOf(needStems, "stem")} cut or still to come`
    : `${inWholes(shortStems)} of ${countOf(needStems, "stem")} short`;
