import { stemsAskedFor, tooManyStems } from "#lib/domain/booking-stems";
import { addDays, type Day } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { EarlierAsk } from "#lib/domain/records/earlier-ask";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { Role } from "#lib/domain/words";
import { isCutFor } from "./lapsed";
import { askedBy } from "./needs";

/** So many days before an event nothing is cut for it yet: no stem keeps longer. */
const CUT_WITHIN_DAYS = 100;

/**
 * A draft with the day it is taken on as it will be saved [T7]: a new booking is taken today, and one that is brought forward, taken back after it was
 * cancelled, or held or confirmed after it was an enquiry is taken anew, since nothing was cut for it on days that have passed. A day that the draft names itself stands.
 * One that is made larger in the weeks before its event keeps what it asked for until today.
 * @param bookingId  the booking that the draft would replace; null for a new one
 */
export function takenToday(
  farm: Pick<Snapshot, "bookings" | "recipes">,
  draft: BookingDraft,
  bookingId: number | null,
  today: Day,
): BookingDraft {
  const before = farm.bookings.find(({ id }) => id === bookingId);
  if (!before) return { ...draft, takenOn: draft.takenOn ?? today };
  const isReopened = before.status === "cancelled" && draft.status !== "cancelled";
  const isTakenAnew = isReopened || (isCutFor(draft) && !isCutFor(before)) || draft.eventOn < before.eventOn;
  if (isTakenAnew && draft.takenOn === before.takenOn) return { ...draft, takenOn: today, askedBefore: [] };
  return { ...draft, askedBefore: askedUntil(farm, before, draft, today) };
}

/** What a booking asked for on days that have passed, when it is made what the draft says. */
function askedUntil(
  { recipes }: Pick<Snapshot, "recipes">,
  before: BookingDraft,
  draft: BookingDraft,
  today: Day,
): EarlierAsk[] {
  const recipeOf = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  const stemsOf = (booking: BookingDraft): Map<Role, number> | null => {
    const isKnown = booking.pieces.every(({ recipeId }) => recipeOf.has(recipeId));
    if (!isKnown || tooManyStems(stemsAskedFor(booking, (id) => recipeOf.get(id)?.lines ?? []))) return null;
    const sums = new Map<Role, number>();
    for (const { role, stems } of askedBy({ ...booking, id: 0 }, new ById("recipe", recipes)))
      sums.set(role, (sums.get(role) ?? 0) + stems);
    return sums;
  };
  const [was, is] = [stemsOf(before), stemsOf(draft)];
  const isSoon = draft.eventOn <= addDays(today, CUT_WITHIN_DAYS);
  if (!was || !is || !isSoon || [...is].every(([role, stems]) => stems <= (was.get(role) ?? 0)))
    return before.askedBefore;
  // What was asked for as the day began stands, however often it is made larger on it.
  const known = new Set(before.askedBefore.filter(({ until }) => until === today).map(({ role }) => role));
  const roles = [...new Set([...was.keys(), ...is.keys()])].filter((role) => !known.has(role));
  return [...before.askedBefore, ...roles.map((role) => ({ until: today, role, stems: was.get(role) ?? 0 }))];
}
