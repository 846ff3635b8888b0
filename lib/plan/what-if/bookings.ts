import { stemsAskedFor, tooManyStems } from "#lib/domain/booking-stems";
import type { Booking, BookingDraft } from "#lib/domain/records/booking";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { type Applied, newId, unchanged, unchangedSinceGone, withoutRow, withRow } from "./applied";

/** The farm with one booking more. Refused when it names a recipe or a crop that the farm does not have, or asks for too many stems. */
export function addedBooking(now: Snapshot, before: Snapshot, draft: BookingDraft): Applied {
  const recipes = new ById("recipe", now.recipes);
  if (draft.pieces.some(({ recipeId }) => !recipes.has(recipeId)))
    return unchanged(now, { kind: "booking-names-gone", client: draft.client, what: "recipe" });
  const cropIds = new Set(now.crops.map(({ id }) => id));
  const named = [...draft.unacceptableCropIds, ...draft.stemLines.flatMap(({ cropId }) => cropId ?? [])];
  if (named.some((id) => !cropIds.has(id)))
    return unchanged(now, { kind: "booking-names-gone", client: draft.client, what: "crop" });
  const stems = stemsAskedFor(draft, (id) => recipes.get(id).lines);
  if (tooManyStems(stems)) return unchanged(now, { kind: "booking-overfull", client: draft.client, stems });
  const booking: Booking = { id: newId(now.bookings, before.bookings), ...draft };
  return { snapshot: { ...now, bookings: [...now.bookings, booking] } };
}

/** The farm with one booking otherwise. */
export function withBooking(now: Snapshot, bookingId: number, otherwise: (booking: Booking) => Booking): Applied {
  if (!now.bookings.some(({ id }) => id === bookingId)) return unchangedSinceGone(now, "this booking");
  return { snapshot: { ...now, bookings: withRow(now.bookings, bookingId, otherwise) } };
}

/** The farm without the booking. */
export function droppedBooking(now: Snapshot, bookingId: number): Applied {
  if (!now.bookings.some(({ id }) => id === bookingId)) return unchangedSinceGone(now, "this booking");
  return { snapshot: { ...now, bookings: withoutRow(now.bookings, bookingId) } };
}
