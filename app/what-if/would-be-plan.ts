import type { WhatIf } from "#lib/domain/what-if";
import { type Plan, plan } from "#lib/plan/road/plan";
import { applyChanges, type ChangeMisfit } from "#lib/plan/what-if/what-if";

/** The plan of the farm as it would be, and which changes did not fit it. */
export type WouldBePlan = { readonly plan: Plan; readonly misfits: readonly ChangeMisfit[] };

/** More bookings than any farm has. */
const IDS_APART = 1_000_000;

/**
 * Plans a what-if of the farm as it stands, `now`, a plan of the same season. Bookings that it adds are numbered apart for each what-if, so that side by side two added bookings are never taken for
 * one and the same.
 */
export function wouldBePlan(now: Plan, { id, seasonYear, changes }: WhatIf): WouldBePlan {
  const farm = now.snapshot;
  const { snapshot, frostDay, misfits } = applyChanges(farm, seasonYear, changes);
  const known = new Set(farm.bookings.map((booking) => booking.id));
  const bookings = snapshot.bookings.map((booking) =>
    known.has(booking.id) ? booking : { ...booking, id: id * IDS_APART + booking.id },
  );
  return { plan: plan({ ...snapshot, bookings }, seasonYear, frostDay, now, now.today), misfits };
}
