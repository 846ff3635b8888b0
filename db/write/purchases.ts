import { and, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { variety } from "#db/schema/crops";
import { purchase } from "#db/schema/purchases";
import { type Day, inFull } from "#lib/domain/day";
import type { Purchase, PurchaseDraft } from "#lib/domain/records/purchase";
import { AS_ITS_CROP, type Variety } from "#lib/domain/records/variety";
import { counted, known } from "./known";
import { insertVariety } from "./put-crops";
import { addRow, changeRow, removeRow } from "./put-row";
import { Refusals, refuse } from "./refusal";
import { type Written, write } from "./write";

/** A flower as a supplier sells it: a variety of the farm by its id, or by crop, name and colour, made where the farm has none of that name. */
type BoughtFlower = number | Pick<Variety, "cropId" | "name" | "colour">;

/** What is ordered of one flower. */
export type PurchaseOrder = Omit<PurchaseDraft, "varietyId"> & { readonly flower: BoughtFlower };

/** Writes down what was ordered from a supplier, all of it as one change, and gives the ids. Refused when a variety, crop or booking is not on the farm. */
export const placePurchases = (database: FarmDatabase, orders: readonly PurchaseOrder[]): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const ids = refusals.each("lines", orders, ({ flower, ...order }) => {
      if (order.bookingId !== null) known(database, "booking", order.bookingId, "bookingId");
      return addRow(database, purchase, { ...order, varietyId: varietyOf(database, flower) });
    });
    refusals.end();
    const bunches = counted(
      orders.reduce((sum, { bunchCount }) => sum + bunchCount, 0),
      "bunch",
      "bunches",
    );
    const [first] = orders;
    return {
      title: first
        ? `ordered ${bunches} from ${first.supplier}, to arrive on ${inFull(first.arrivesOn)}`
        : "ordered nothing",
      result: ids,
    };
  });

/** Makes a purchase what `draft` says. */
export const changePurchase = (
  database: FarmDatabase,
  { id, ...draft }: PurchaseDraft & { readonly id: number },
): Written =>
  write(database, () => {
    known(database, "purchase", id);
    known(database, "variety", draft.varietyId, "varietyId");
    if (draft.bookingId !== null) known(database, "booking", draft.bookingId, "bookingId");
    changeRow(database, purchase, id, draft);
    return { title: `changed the order of ${known(database, "purchase", id)}`, result: id };
  });

/** Takes a purchase out of the records: it was never ordered, or the order was cancelled. */
export const removePurchase = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "purchase", id);
    removeRow(database, purchase, id);
    return { title: `took back the order of ${name}`, result: id };
  });

/** What came of a purchase: 0 says that none did. */
export type Arrival = { readonly id: number; readonly arrivedStems: number };

/** Writes down what came on a day, all of it as one change. Refused when a purchase is not on the farm. */
export const recordArrivals = (
  database: FarmDatabase,
  { arrivedOn, arrivals }: { readonly arrivedOn: Day; readonly arrivals: readonly Arrival[] },
): Written<readonly number[]> =>
  write(database, () => {
    const refusals = new Refusals();
    const names = refusals.each("arrivals", arrivals, ({ id, arrivedStems }) => {
      setArrived(database, id, { arrivedOn, arrivedStems });
      return known(database, "purchase", id);
    });
    refusals.end();
    const stems = counted(
      arrivals.reduce((sum, { arrivedStems }) => sum + arrivedStems, 0),
      "stem",
    );
    const what = names.length === 1 ? names[0] : counted(names.length, "flower");
    return { title: `recorded ${stems} arrived: ${what}`, result: arrivals.map(({ id }) => id) };
  });

/** Takes the record of what came of a purchase back: it is on the way again. */
export const takeBackArrival = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    setArrived(database, id, { arrivedOn: null, arrivedStems: null });
    return { title: `took back the arrival of ${known(database, "purchase", id)}`, result: id };
  });

function setArrived(database: FarmDatabase, id: number, arrived: Pick<Purchase, "arrivedOn" | "arrivedStems">): void {
  known(database, "purchase", id);
  database.update(purchase).set(arrived).where(eq(purchase.id, id)).run();
}

/** The id of a flower's variety, made where it is new. Refused when the farm has one of its name in another colour. */
function varietyOf(database: FarmDatabase, flower: BoughtFlower): number {
  if (typeof flower === "number") {
    known(database, "variety", flower, "flower");
    return flower;
  }
  known(database, "crop", flower.cropId, "flower");
  const before = database
    .select({ id: variety.id, colour: variety.colour })
    .from(variety)
    .where(and(eq(variety.cropId, flower.cropId), eq(variety.name, flower.name)))
    .get();
  if (before && before.colour !== flower.colour)
    refuse("flower", `${flower.name} is ${before.colour} on the farm: give this one another name`);
  return before?.id ?? insertVariety(database, { ...flower, ...AS_ITS_CROP });
}
