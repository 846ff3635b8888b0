import { addDays, type Day, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { RowWaits } from "#lib/plan/road/row-waits";
import { countOf, forCount, inWholes } from "./numbers";

/** When a row that is left is cut, as seen from its day: "Tomorrow", "On Sat 12 Jun". */
export const waitsWhen = ({ until }: Pick<RowWaits, "until">, day: Day): string =>
  until === addDays(day, 1) ? "Tomorrow" : `On ${withWeekday(until)}`;

/** Why a row cannot be left, or what is lost where it is; null where all of it waits: "12 of its 30 stems fade before Sat 12 Jun." */
export function waitsInWords(waits: RowWaits): string | null {
  const { until, stems, waitingStems } = waits;
  const whyNot = whyItCannot(waits);
  if (whyNot !== null) return `Cannot wait: ${whyNot}.`;
  const faded = stems - waitingStems;
  const fade =
    faded > 0
      ? `${inWholes(faded)} of ${countOf(stems, "stem")} ${forCount(faded, "fades", "fade")} before ${withWeekday(until)}`
      : "";
  const lost = [fade, lateInWords(waits)].filter((part) => part !== "");
  return lost.length === 0 ? null : `If it waits: ${lost.join("; ")}.`;
}

/** Why nothing of a row that is left would be of use: "Sat 12 Jun is too late for Ash"; null where something would. */
export function whyItCannot(waits: RowWaits): string | null {
  if (waits.waitingStems === 0)
    return `${withWeekday(waits.until)} is the next picking day, and these do not keep in the field until then`;
  return waits.isOfUse ? null : lateInWords(waits);
}

const lateInWords = ({ until, tooLate }: RowWaits): string =>
  tooLate.length === 0 ? "" : `${withWeekday(until)} is too late for ${allOf(tooLate)}`;

/** Rows of a list that cannot wait, said once for all of them, with their names by the reason. */
export type CannotWait = {
  readonly lead: string;
  readonly reasons: readonly { readonly why: string; readonly names: readonly string[] }[];
};

/** So many rows say for themselves that they cannot wait, though they be most of a list. */
const FEW = 2;

/**
 * What is said above a list of which most rows cannot wait, so that only those that can are marked: "9 of these 14 rows cannot wait for another picking day; those that
 * can have a button for it." Null where most can, and each that cannot says so itself.
 */
export function cannotWait(
  rows: readonly { readonly name: string; readonly waits: RowWaits | null }[],
): CannotWait | null {
  const names = new Map<string, string[]>();
  for (const { name, waits } of rows) {
    const why = waits && whyItCannot(waits);
    if (why) names.set(why, [...(names.get(why) ?? []), name]);
  }
  const reasons = [...names].map(([why, ofReason]) => ({ why, names: ofReason }));
  const count = reasons.reduce((sum, { names: ofReason }) => sum + ofReason.length, 0);
  if (count <= FEW || count <= rows.length / 2) return null;
  const lead =
    count === rows.length
      ? `None of these ${inWholes(count)} rows can wait for another picking day.`
      : `${inWholes(count)} of these ${inWholes(rows.length)} rows cannot wait for another picking day; ${forCount(rows.length - count, "the one that can has", "those that can have")} a button for it.`;
  return { lead, reasons };
}
