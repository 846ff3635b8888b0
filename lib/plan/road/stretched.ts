import type { Snapshot } from "#lib/domain/snapshot";
import { buyInFinder } from "./buy-in";
import { claimOf } from "./claim";
import { ageCents } from "./fit";
import type { Match } from "./match";
import { stretchCentsFinder } from "./stretch-cents";

/** Stems that are held longer than they keep as good as fresh, and what the match counts for their age, in cents [M3]. */
export type Stretched = { readonly stems: number; readonly cents: number };

/** What each booking gets at a stretch, by booking id; bookings with no such stem are left out. */
export function stretchedByBooking(
  snapshot: Pick<Snapshot, "farm" | "crops" | "varieties">,
  { needs, supplies, servings }: Pick<Match, "needs" | "supplies" | "servings">,
): Map<number, Stretched> {
  const { farm } = snapshot;
  const stretchCents = stretchCentsFinder(farm, buyInFinder(snapshot));
  const found = new Map<number, Stretched>();
  for (const { needIndex, supplyIndex, cutDay, stems } of servings) {
    const { booking, eventDay, leadDays } = needs[needIndex];
    const { crop, hold, bookingId } = supplies[supplyIndex];
    const heldDays = eventDay - cutDay;
    if (heldDays <= hold.days) continue;
    const before = found.get(booking.id) ?? { stems: 0, cents: 0 };
    // What is cut already for the booking costs nothing by its age [T2].
    const ofStem =
      bookingId === undefined ? ageCents(heldDays, leadDays, hold, stretchCents(crop, claimOf(booking))) : 0;
    found.set(booking.id, { stems: before.stems + stems, cents: before.cents + stems * ofStem });
  }
  return found;
}
