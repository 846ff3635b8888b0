import type { Booking } from "#lib/domain/records/booking";
import { withShortClients } from "#lib/domain/short-clients";
import type { Snapshot } from "#lib/domain/snapshot";

const farms = new WeakMap<Snapshot, Snapshot>();
const bookings = new WeakMap<Booking, Booking>();

/**
 * The farm as a helper's pages are made of it: what they are not to see is not in it, so that no page can send it. Its match is the owner's, since no
 * stem goes by a client's name. What is the same stays the same object, so that plans of it are made anew only where the farm has changed.
 */
export function forHelper(farm: Snapshot): Snapshot {
  const made = farms.get(farm) ?? {
    ...farm,
    bookings: withShortClients(farm.bookings).map((short, index) => {
      const own = farm.bookings[index];
      const before = bookings.get(own);
      if (before?.client === short.client) return before;
      bookings.set(own, short);
      return short;
    }),
  };
  farms.set(farm, made);
  return made;
}
