import { addDays, type Day, withWeekday } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { RowWaits } from "#lib/plan/road/row-waits";
import { countOf, forCount, inWholes } from "./numbers";

/** When a row that is left is cut, as seen from its day: "Tomorrow", "On Sat 12 Jun". */
export const waitsWhen = ({ until }: Pick<RowWaits, "until">, day: Day): string =>
  until === addDays(day, 1) ? "Tomorrow" : `On ${withWeekday(until)}`;

/** Why a row cannot be left, or what is lost where it is; null where all of it waits: "12 of its 30 stems fade before Sat 12 Jun." */
export function waitsInWords({ until, stems, waitingStems, tooLate, isOfUse }: RowWaits): string | null {
  const day = withWeekday(until);
  if (waitingStems === 0)
    return `Cannot wait: ${day} is the next picking day, and these do not keep in the field until then.`;
  const late = tooLate.length === 0 ? "" : `${day} is too late for ${allOf(tooLate)}`;
  if (!isOfUse) return `Cannot wait: ${late}.`;
  const faded = stems - waitingStems;
  const fade =
    faded > 0
      ? `${inWholes(faded)} of ${countOf(stems, "stem")} ${forCount(faded, "fades", "fade")} before ${day}`
      : "";
  const lost = [fade, late].filter((part) => part !== "");
  return lost.length === 0 ? null : `If it waits: ${lost.join("; ")}.`;
}
