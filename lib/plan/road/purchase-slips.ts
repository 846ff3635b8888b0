import { toDayNumber } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Purchase } from "#lib/domain/records/purchase";
import type { Variety } from "#lib/domain/records/variety";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { stemsOfPurchase } from "./purchases";

/** A purchase with what it names. `costCents` is of all its bunches, null where no price is told. */
export type PurchaseLine = {
  readonly purchase: Purchase;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly booking: Booking | null;
  readonly orderedStems: number;
  readonly costCents: number | null;
};

/** What one supplier brings on one day. Day number: that of the order, or where it came, that on which it came. */
export type PurchaseSlip = {
  readonly supplier: string;
  readonly day: number;
  readonly lines: readonly PurchaseLine[];
};

/** The purchases of a farm, each with what it names, in order of id. */
export function purchaseLines({ purchases, varieties, crops, bookings }: Snapshot): PurchaseLine[] {
  const varietyOf = new ById("variety", varieties);
  const cropOf = new ById("crop", crops);
  const bookingOf = new ById("booking", bookings);
  return purchases.map((purchase) => {
    const { varietyId, bookingId, bunchCount, bunchStems, bunchCents } = purchase;
    const variety = varietyOf.get(varietyId);
    return {
      ...{ purchase, variety, crop: cropOf.get(variety.cropId) },
      booking: bookingId === null ? null : bookingOf.get(bookingId),
      orderedStems: bunchCount * bunchStems,
      costCents: bunchCents === null ? null : bunchCount * bunchCents,
    };
  });
}

/** Whether it is not written down yet that a purchase came, or that none did. */
export const isOnTheWay = ({ purchase }: Pick<PurchaseLine, "purchase">): boolean => purchase.arrivedStems === null;

/** Stems of a purchase that were ordered and did not come; 0 while it is on the way. */
export const stemsNotDelivered = ({ purchase, orderedStems }: PurchaseLine): number =>
  isOnTheWay({ purchase }) ? 0 : Math.max(0, orderedStems - stemsOfPurchase(purchase));

/** Purchases by supplier and day, the first day first, on one day by supplier. */
export function purchaseSlips(lines: readonly PurchaseLine[]): PurchaseSlip[] {
  const slips = new Map<string, PurchaseSlip & { lines: PurchaseLine[] }>();
  for (const line of lines) {
    const { supplier, arrivesOn, arrivedOn } = line.purchase;
    const day = toDayNumber(arrivedOn ?? arrivesOn);
    const slip = slips.get(`${day} ${supplier}`) ?? { supplier, day, lines: [] };
    slip.lines.push(line);
    slips.set(`${day} ${supplier}`, slip);
  }
  return [...slips.values()].sort(
    (a, b) => a.day - b.day || (a.supplier < b.supplier ? -1 : a.supplier > b.supplier ? 1 : 0),
  );
}

/** Bunches and cents of some purchases added up; those without a price cost nothing here and are counted apart. */
export const purchaseTotals = (lines: readonly PurchaseLine[]) => ({
  bunchCount: lines.reduce((sum, { purchase }) => sum + purchase.bunchCount, 0),
  costCents: lines.reduce((sum, { costCents }) => sum + (costCents ?? 0), 0),
  unpricedCount: lines.filter(({ costCents }) => costCents === null).length,
});
