import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { isOnTheWay, purchaseLines } from "#lib/plan/road/purchase-slips";
import { orderedInWords } from "#lib/plan/words/purchase-words";
import { MissedEvent } from "./missed-event";

type Props = { snapshot: Snapshot; bookingId: Booking["id"]; today: number };

/** What a booking's stems wait for: ordered from whom, and when it comes. Nothing when nothing is on the way for it. A day number. */
export function OrderedFor({ snapshot, bookingId, today }: Props) {
  const lines = purchaseLines(snapshot).filter((line) => isOnTheWay(line) && line.purchase.bookingId === bookingId);
  if (lines.length === 0) return null;
  return (
    <ul className="ordered-for" aria-label="On the way for it">
      {lines.map((line) => (
        <li key={line.purchase.id}>
          {orderedInWords(line, today)} <MissedEvent line={line} farm={snapshot.farm} />
        </li>
      ))}
    </ul>
  );
}
