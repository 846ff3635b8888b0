import { inShort } from "#lib/domain/day";
import type { BedVerdict } from "#lib/plan/winter/verdicts";
import { forCount, inPercent, inRoundMoney, inWholes, inWords } from "./numbers";

type Worth = Pick<BedVerdict, "isKept" | "worthCents" | "breakEvenShare">;

/** What a bed's present fate saves over the other, "$131 kept", or what the other would: "$471 if kept", "$13 if dug". Under half a dollar, "nothing". */
export function savingInWords({ isKept, worthCents }: Worth): string {
  if (Math.abs(worthCents) < 50) return "nothing";
  const isAsTicked = worthCents > 0;
  return `${inRoundMoney(Math.abs(worthCents))} ${isAsTicked ? "" : "if "}${isKept === isAsTicked ? "kept" : "dug"}`;
}

/** True when the other fate would be cheaper. */
export const isWrongWay = ({ worthCents }: Pick<Worth, "worthCents">): boolean => worthCents <= -50;

/** The survival from which keeping pays: "from 38 %", or why there is none. */
export function breakEvenInWords({ breakEvenShare, isKept, worthCents }: Worth): string {
  if (breakEvenShare !== null) return `from ${inPercent(breakEvenShare)}`;
  const isKeepingCheaper = isKept ? worthCents >= 0 : worthCents < 0;
  return isKeepingCheaper ? "whatever lives" : "never";
}

/** "45", "−3"; a middle dot for none. */
export const stemsInWords = (stems: number): string =>
  stems === 0 ? "·" : stems < 0 ? `−${inWholes(-stems)}` : inWholes(stems);

/** "14 Jun +45, 21 Jun −3": focal stems covered by keeping, by the Monday of the week. */
export const weeksInWords = (weeks: BedVerdict["weeks"]): string =>
  weeks
    .map(({ monday, focalStems }) => `${inShort(monday)} ${focalStems < 0 ? "−" : "+"}${Math.abs(focalStems)}`)
    .join(", ");

/** A choice as a title: "Keep six beds, dig the rest". `openCount` are the beds that may be kept. */
export function choiceTitle(keptCount: number, openCount: number): string {
  if (keptCount === 0) return "Dig every bed";
  if (keptCount === openCount) return "Keep every bed that may be kept";
  return `Keep ${inWords(keptCount)} ${forCount(keptCount, "bed")}, dig the rest`;
}
