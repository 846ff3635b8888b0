import type { Booking } from "#lib/domain/records/booking";
import type { BuyIn } from "./buying";

/** What is bought in to arrive on one day: the stems of which it is the last day on which they may be cut. Day numbers. */
export type BuyingSlip = {
  readonly arriveBy: number;
  readonly orderBy: number;
  readonly bookings: readonly Booking[];
  readonly lines: readonly BuyIn[];
};

/** Purchases as slips, one for each day of arrival, the first to order first: bought stems are there on the last day that a stem may be cut for the event [M1]. */
export function buyingSlips(buying: readonly BuyIn[]): BuyingSlip[] {
  const slips = new Map<number, BuyIn[]>();
  for (const line of buying) {
    const arriveBy = line.gap.need.eventDay - line.gap.need.leadDays;
    const known = slips.get(arriveBy);
    if (known) known.push(line);
    else slips.set(arriveBy, [line]);
  }
  return [...slips]
    .sort(([a], [b]) => a - b)
    .map(([arriveBy, lines]) => ({
      arriveBy,
      orderBy: lines[0].orderBy,
      bookings: [...new Map(lines.map(({ gap: { need } }) => [need.booking.id, need.booking])).values()],
      lines,
    }));
}

/** Bunches and cents of some purchases added up. */
export const buyingTotals = (lines: readonly BuyIn[]) => ({
  bunchCount: lines.reduce((sum, line) => sum + line.bunchCount, 0),
  costCents: lines.reduce((sum, line) => sum + line.costCents, 0),
});
