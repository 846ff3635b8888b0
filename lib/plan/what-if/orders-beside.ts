import type { Snapshot } from "#lib/domain/snapshot";
import { type DeliveryRow, deliveryRows, deliveryTotals } from "#lib/plan/road/order-rows";
import { type Plan, plan } from "#lib/plan/road/plan";
import { withKeptBeds } from "#lib/plan/winter/beds";

/** What a season's standing orders ask for and get, in stems, and what those bring, in cents. */
type Earned = Omit<DeliveryRow, "delivery">;

/** The same with every candidate bed dug, and with some kept. */
export type OrdersBeside = { readonly dug: Earned; readonly kept: Earned };

/**
 * What a choice of beds does to standing orders, step by step: both winters are planned afresh, so that the figures are those that the season has once the beds are
 * adopted. They are no part of the choice, since orders are served from what bookings leave [SO2]. Null where no order goes out in the season, or when stopped.
 * @param today  the day it is planned on, as a day number; null plans the season as if no day had passed
 */
export function* ordersBeside(
  snapshot: Snapshot,
  seasonYear: number,
  keptBedIds: readonly number[],
  today: number | null,
): Generator<null, OrdersBeside | null, boolean | undefined> {
  if (snapshot.standingOrders.length === 0) return null;
  if (yield null) return null;
  const allDug = plan(withKeptBeds(snapshot, seasonYear, []), seasonYear, undefined, null, today);
  const dug = earned(allDug);
  if (dug === null || (yield null)) return null;
  const kept = earned(plan(withKeptBeds(snapshot, seasonYear, keptBedIds), seasonYear, undefined, allDug, today));
  return kept && { dug, kept };
}

function earned({ orders, seasonYear }: Plan): Earned | null {
  const totals = orders && deliveryTotals(deliveryRows(orders, seasonYear));
  return totals?.needStems ? totals : null;
}
