import { inFull, inShort } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Booking } from "#lib/domain/records/booking";
import type { SinceFinal } from "#lib/plan/road/final-count";
import { countOf, forCount, inTenths, inWholes } from "./numbers";

/** What became of a final count: "Since the final count of 12 May: Bouquet 6 → 7, so 24 stems more." */
export function sinceFinalInWords({ finalOn, changed, moreStems }: SinceFinal): string {
  const stems = moreStems === null ? null : stemsInWords(moreStems);
  if (changed.length > 0) {
    const pieces = changed.map(({ what, was, is }) => `${what} ${countedOrNone(was)} → ${countedOrNone(is)}`);
    return `Since the final count of ${inShort(finalOn)}: ${pieces.join("; ")}${stems === null ? "" : `; ${stems}`}.`;
  }
  return stems === null || moreStems === 0
    ? `As at the final count of ${inShort(finalOn)}.`
    : `The pieces are those of the final count of ${inShort(finalOn)}; by recipe or spare they ask for ${stems}.`;
}

/** What was done, for the list of changes: "took the final count of Ivy: 412 stems". */
export const finalCountTitle = (client: string, stems: number): string =>
  `took the final count of ${client}: ${countOf(stems, "stem")}`;

/** Whose final count is due: "The final counts of Ivy & Sol and Ash are due". */
export const countsDueInWords = (bookings: readonly Pick<Booking, "client">[]): string =>
  bookings.length > 3
    ? `${inWholes(bookings.length)} final counts are due`
    : `The final ${forCount(bookings.length, "count")} of ${allOf(bookings.map(({ client }) => client))} ${forCount(bookings.length, "is", "are")} due`;

/** From when a count is due: "due since Saturday 15 May 2027". */
export const dueInWords = (due: NonNullable<Booking["finalDueOn"]>, today: Booking["eventOn"]): string =>
  due > today ? `is due on ${inFull(due)}` : due === today ? "is due today" : `is due since ${inFull(due)}`;

const stemsInWords = (more: number): string =>
  more === 0 ? "as many stems" : `${countOf(Math.abs(more), "stem")} ${more > 0 ? "more" : "fewer"}`;

const countedOrNone = (count: number): string => (count === 0 ? "none" : inTenths(count));
