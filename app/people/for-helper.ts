import { withShortBuyers, withShortClients } from "#lib/domain/short-clients";
import type { Snapshot } from "#lib/domain/snapshot";

const farms = new WeakMap<Snapshot, Snapshot>();
const rows = new WeakMap<object, object>();

/**
 * The farm as a helper's pages are made of it: what they are not to see is not in it, so that no page can send it. Its match is the owner's, since no
 * stem goes by a name. What is the same stays the same object, so that plans of it are made anew only where the farm has changed.
 */
export function forHelper(farm: Snapshot): Snapshot {
  const made = farms.get(farm) ?? {
    ...farm,
    bookings: sameWhere(farm.bookings, withShortClients(farm.bookings), ({ client }) => client),
    purchases: sameWhere(
      farm.purchases,
      farm.purchases.map((purchase) => ({ ...purchase, bunchCents: null })),
      ({ bunchCents }) => String(bunchCents),
    ),
    standingOrders: sameWhere(farm.standingOrders, withShortBuyers(farm.standingOrders), ({ buyer }) => buyer),
  };
  farms.set(farm, made);
  return made;
}

/** The short rows; where one was made of the same row under the same name before, that one. */
function sameWhere<T extends object>(own: readonly T[], short: readonly T[], nameOf: (row: T) => string): T[] {
  return short.map((row, index) => {
    const before = rows.get(own[index]) as T | undefined;
    if (before && nameOf(before) === nameOf(row)) return before;
    rows.set(own[index], row);
    return row;
  });
}
