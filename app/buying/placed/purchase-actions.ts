"use server";

import { changePurchase, placePurchases, recordArrivals, removePurchase, takeBackArrival } from "#db/write/purchases";
import { PURCHASE, purchaseDraftSchema } from "#lib/domain/records/purchase";
import { action, idIn } from "../../action";
import { today } from "../../clock";
import { arrivalsOf, ordersOf } from "./place-values";

const toBuying = () => "/buying#on-the-way";

/** Writes down that a slip was ordered. */
export const placeOrder = action((values) => ordersOf(values, today()), placePurchases, toBuying);

/** Writes down one flower that was ordered, for a booking or for anybody. */
export const addPurchase = action(
  (values, { farm }) => {
    const read = values.record(PURCHASE, farm, { given: NOT_ARRIVED, schema: purchaseDraftSchema });
    if (!read.ok) return read;
    const { varietyId, ...order } = read.parsed;
    return { ok: true, parsed: [{ ...order, flower: varietyId }] };
  },
  placePurchases,
  toBuying,
);

const NOT_ARRIVED = { arrivedOn: null, arrivedStems: null };

/** Changes what was ordered of a flower; what came of it stays. */
export const savePurchase = action(
  (values, { farm, purchases }) => {
    const id = values.hiddenNumber("purchaseId");
    const before = purchases.find((purchase) => purchase.id === id);
    const given = before ? { arrivedOn: before.arrivedOn, arrivedStems: before.arrivedStems } : NOT_ARRIVED;
    const read = values.record(PURCHASE, farm, { before, given, schema: purchaseDraftSchema });
    return read.ok ? { ok: true, parsed: { ...read.parsed, id } } : read;
  },
  changePurchase,
  toBuying,
);

/** Takes a flower out of what was ordered. */
export const cancelPurchase = action(idIn("purchaseId"), removePurchase, toBuying);

/** Writes down what came of some flowers. */
export const receivePurchases = action((values) => arrivalsOf(values, today()), recordArrivals);

/** Takes that back: the flower is on the way again. */
export const takeBackReceived = action(idIn("purchaseId"), takeBackArrival);
