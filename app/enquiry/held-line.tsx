import { inFull } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";

/** The booking that was just held, by its id in the address; nothing once it was taken back. */
export function HeldLine({ id, bookings }: { id: unknown; bookings: readonly Booking[] }) {
  const held = bookings.find((booking) => String(booking.id) === id);
  if (!held) return null;
  return (
    <p className="notice good" role="status">
      Held: <a href={`/bookings/${held.id}`}>{held.client}</a>, {inFull(held.eventOn)}. Add its pieces when the caller
      knows them.
    </p>
  );
}
