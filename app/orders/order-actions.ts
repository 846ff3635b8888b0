"use server";

import { putOrder, removeOrder } from "#db/write/orders";
import { STANDING_ORDER, standingOrderDraftSchema } from "#lib/domain/records/standing-order";
import { halfPieceInWords } from "#lib/plan/words/half-pieces";
import { action, idIn } from "../action";

/** The orders, none of them open to change. */
const TO_ORDERS = "/orders";

/** Adds a standing order, or changes one. A piece says its own stems, and is asked for in wholes where it is made so. */
export const saveOrder = action(
  (values, { farm, standingOrders, recipes }) => {
    const id = values.text("orderId") ? values.hiddenNumber("orderId") : undefined;
    const before = standingOrders.find((order) => order.id === id);
    const order = values.record(STANDING_ORDER, farm, { before, schema: standingOrderDraftSchema });
    if (!order.ok) return order;
    const { recipeId, cropId, askedCount } = order.parsed;
    const recipe = recipes.find((row) => row.id === recipeId);
    const half = recipe ? halfPieceInWords(askedCount, recipe) : null;
    if (half !== null) values.refuse("askedCount", half);
    if (recipe && cropId !== null) values.refuse("cropId", "a piece says its own stems: leave the crop open");
    return half !== null || (recipe && cropId !== null)
      ? values.refusal()
      : { ok: true, parsed: { ...order.parsed, id } };
  },
  putOrder,
  (_, { id }) => (id === undefined ? null : TO_ORDERS),
);

/** Takes a standing order out. */
export const deleteOrder = action(idIn("orderId"), removeOrder, () => TO_ORDERS);
