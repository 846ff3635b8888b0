import type { Delivery, OrdersPlan } from "./orders";
import { seasonOfBooking } from "./seasons";

/** What a delivery asks and gets, in stems, and what those bring, in cents. */
export type DeliveryRow = {
  readonly delivery: Delivery;
  readonly needStems: number;
  readonly gotStems: number;
  readonly earnedCents: number;
};

/** The deliveries of a season, by day, each with what it gets. */
export function deliveryRows({ deliveries, match }: OrdersPlan, seasonYear: number): DeliveryRow[] {
  const asked = new Map<number, { needStems: number; gotStems: number }>();
  match.needs.forEach(({ booking, stems }, index) => {
    const sum = asked.get(booking.id) ?? { needStems: 0, gotStems: 0 };
    sum.needStems += stems;
    sum.gotStems += stems - match.shortStems[index];
    asked.set(booking.id, sum);
  });
  return deliveries
    .filter(({ booking }) => seasonOfBooking(booking) === seasonYear)
    .map((delivery) => {
      const { needStems, gotStems } = asked.get(delivery.booking.id) ?? { needStems: 0, gotStems: 0 };
      return { delivery, needStems, gotStems, earnedCents: gotStems * delivery.order.stemCents };
    });
}

/** Deliveries added up. */
export const deliveryTotals = (rows: readonly DeliveryRow[]): Omit<DeliveryRow, "delivery"> => ({
  needStems: rows.reduce((sum, row) => sum + row.needStems, 0),
  gotStems: rows.reduce((sum, row) => sum + row.gotStems, 0),
  earnedCents: rows.reduce((sum, row) => sum + row.earnedCents, 0),
});
