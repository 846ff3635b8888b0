import type { KeptTally } from "#lib/domain/tally";
import type { TallyKind } from "#lib/domain/unsent";
import { countOf, inWholes } from "./numbers";

/** "3 counts are not sent yet: they are kept on this phone."; changes, where not all of them are counts. */
export function unsentInWords(kinds: readonly TallyKind[]): string {
  const said = countOf(kinds.length, kinds.every((kind) => kind === "counted") ? "count" : "change");
  return kinds.length === 1
    ? `${said} is not sent yet: it is kept on this phone.`
    : `${said} are not sent yet: they are kept on this phone.`;
}

/** What was said of a row: "9 stems", "really 7 stems in all", "taken back". */
export function saidInWords(kind: TallyKind, stemsCut: number): string {
  if (kind === "taken back") return "taken back";
  return kind === "corrected" ? `really ${countOf(stemsCut, "stem")} in all` : countOf(stemsCut, "stem");
}

/** What became of a record before a late count of its row came; null where it was taken back. */
export const recordNowInWords = (stemsNow: number | null): string =>
  stemsNow === null ? "the record was taken back." : `the record was corrected to ${countOf(stemsNow, "stem")}.`;

/** "9 stems by Wren and 7 by the owner"; who is not named is the owner. */
export function countersInWords(tallies: readonly Pick<KeptTally, "stemsCut" | "countedBy">[]): string {
  const stemsOf = new Map<string, number>();
  for (const { stemsCut, countedBy } of tallies) {
    const who = countedBy === null || countedBy === "owner" ? "the owner" : countedBy;
    stemsOf.set(who, (stemsOf.get(who) ?? 0) + stemsCut);
  }
  const said = [...stemsOf].map(
    ([who, stems], index) => `${index === 0 ? countOf(stems, "stem") : inWholes(stems)} by ${who}`,
  );
  return said.length < 2 ? said.join("") : `${said.slice(0, -1).join(", ")} and ${said.at(-1)}`;
}

/**
 * What to doubt where several counted one row and their counts together are more than stood there: "16 stems counted where 9 were expected to stand: did two count the same
 * stems?" Null where one alone counted, or no more than stood there.
 */
export const overfullInWords = (countedTimes: number, stemsCut: number, stemsReady: number): string | null =>
  countedTimes < 2 || stemsCut <= stemsReady
    ? null
    : `${countOf(stemsCut, "stem")} counted where ${inWholes(stemsReady)} were expected to stand: did two count the same stems?`;
