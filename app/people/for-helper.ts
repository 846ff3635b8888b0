import type { Purchase } from "#lib/domain/records/purchase";
import { withShortBuyers, withShortClients } from "#lib/domain/short-clients";
import type { Snapshot } from "#lib/domain/snapshot";

const farms = new WeakMap<Snapshot, Snapshot>();
const rows = new WeakMap<object, object>();
const lists = new WeakMap<readonly object[], readonly object[]>();

/**
 * The farm as a helper's pages are made of it: what they are not to see is not in it, so that no page can send it. Its match is the owner's, since no
 * stem goes by a name. What is the same stays the same object, rows and lists, so that plans of it are made anew only where the farm has changed.
 */
export function forHelper(farm: Snapshot): Snapshot {
  const made = farms.get(farm) ?? {
    ...farm,
    bookings: shortened(farm.bookings, withShortClients, ({ client }) => client),
    purchases: shortened(farm.purchases, withoutCosts, ({ bunchCents }) => String(bunchCents)),
    standingOrders: shortened(farm.standingOrders, withShortBuyers, ({ buyer }) => buyer),
  };
  farms.set(farm, made);
  return made;
}

const withoutCosts = (purchases: readonly Purchase[]): Purchase[] =>
  purchases.map((purchase) => ({ ...purchase, bunchCents: null }));

/** The list made short: the very list that was made of it before; else with the rows that were made of the same rows under the same names before. */
function shortened<T extends object>(
  own: readonly T[],
  short: (own: readonly T[]) => readonly T[],
  nameOf: (row: T) => string,
): readonly T[] {
  const known = lists.get(own) as readonly T[] | undefined;
  if (known) return known;
  const made = short(own).map((row, index) => {
    const before = rows.get(own[index]) as T | undefined;
    if (before && nameOf(before) === nameOf(row)) return before;
    rows.set(own[index], row);
    return row;
  });
  lists.set(own, made);
  return made;
}
