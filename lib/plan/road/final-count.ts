import { addDays, type Day } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { FinalPiece } from "#lib/domain/records/final-count";
import type { Recipe } from "#lib/domain/records/recipe";
import { ById } from "#lib/domain/snapshot";
import { ROLES } from "#lib/domain/words";
import { asksForStems, isCutFor } from "./lapsed";
import { askedBy } from "./needs";

/** A final count as it is written down. */
export type FinalCount = Pick<Booking, "finalOn" | "finalPieces" | "finalStems">;

/** What became of a final count [T13]: `was` and `is` count pieces, 0 where there are none; `moreStems` is negative where fewer are asked for, null where the stems of then are not known. */
export type SinceFinal = {
  readonly finalOn: Day;
  readonly changed: readonly { readonly what: string; readonly was: number; readonly is: number }[];
  readonly moreStems: number | null;
};

/** The day from which a booking's final count is due [T13]: its own, else by the farm's habit; null where the farm asks for none. */
export const finalDueOn = (
  { finalDueOn: own, eventOn }: Pick<Booking, "finalDueOn" | "eventOn">,
  { finalCountDays }: Pick<Farm, "finalCountDays">,
): Day | null => own ?? (finalCountDays > 0 ? addDays(eventOn, -finalCountDays) : null);

/** The bookings whose final count is due and not taken, the next event first [T13]. */
export function finalCountsDue(bookings: readonly Booking[], farm: Farm, today: Day): Booking[] {
  const isDue = (booking: Booking): boolean => {
    const due = finalDueOn(booking, farm);
    return (
      booking.finalOn === null &&
      isCutFor(booking) &&
      asksForStems(booking, today) &&
      booking.eventOn >= today &&
      due !== null &&
      due <= today
    );
  };
  return bookings.filter(isDue).sort((a, b) => (a.eventOn < b.eventOn ? -1 : a.eventOn > b.eventOn ? 1 : a.id - b.id));
}

/** The count of a booking as it stands, taken today. */
export const finalCountOf = (booking: Booking, recipes: readonly Recipe[], today: Day): FinalCount => ({
  finalOn: today,
  finalPieces: countedPieces(booking, recipes),
  finalStems: askedStems(booking, recipes),
});

/** What changed since a booking's final count, in the order of the count; null where none was taken. */
export function sinceFinal(booking: Booking, recipes: readonly Recipe[]): SinceFinal | null {
  const { finalOn, finalPieces, finalStems } = booking;
  if (finalOn === null) return null;
  const was = sums(finalPieces);
  const is = sums(countedPieces(booking, recipes));
  const changed = [...new Set([...was.keys(), ...is.keys()])]
    .map((what) => ({ what, was: was.get(what) ?? 0, is: is.get(what) ?? 0 }))
    .filter((line) => Math.abs(line.was - line.is) > 1e-9);
  return { finalOn, changed, moreStems: finalStems === null ? null : askedStems(booking, recipes) - finalStems };
}

/** Stems that a booking asks for, spare included: the sum of its needs [N1]. */
const askedStems = (booking: Booking, recipes: readonly Recipe[]): number =>
  askedBy(booking, new ById("recipe", recipes)).reduce((sum, { stems }) => sum + stems, 0);

/** The pieces of a booking added up by recipe, in their order, then loose stems by role. */
function countedPieces({ pieces, stemLines }: Booking, recipes: readonly Recipe[]): FinalPiece[] {
  const named = new ById("recipe", recipes);
  const ofPieces = pieces.map(({ recipeId, pieceCount }) => ({ count: pieceCount, what: named.get(recipeId).name }));
  const loose = ROLES.flatMap((role) =>
    stemLines
      .filter((line) => line.role === role)
      .map(({ stemCount }) => ({ count: stemCount, what: `${role} stems, loose` })),
  );
  return [...sums([...ofPieces, ...loose])].map(([what, count]) => ({ count, what }));
}

function sums(pieces: readonly FinalPiece[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { count, what } of pieces) counts.set(what, (counts.get(what) ?? 0) + count);
  return counts;
}
