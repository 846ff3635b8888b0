"use server";

import { putOrder, removeOrder } from "#db/write/orders";
import { STANDING_ORDER, standingOrderDraftSchema } from "#lib/domain/records/standing-order";
import { action, idIn } from "../action";

/** Adds a standing order, or changes one. */
export const saveOrder = action((values, { farm, standingOrders }) => {
  const id = values.text("orderId") ? values.hiddenNumber("orderId") : undefined;
  const before = standingOrders.find((order) => order.id === id);
  const order = values.record(STANDING_ORDER, farm, { before, schema: standingOrderDraftSchema });
  return order.ok ? { ok: true, parsed: { ...order.parsed, id } } : order;
}, putOrder);

/** Takes a standing order out. */
export const deleteOrder = action(idIn("orderId"), removeOrder);
