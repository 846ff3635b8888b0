import type { FarmDatabase } from "#db/client";
import { standingOrder } from "#db/schema/orders";
import type { StandingOrderDraft } from "#lib/domain/records/standing-order";
import { known } from "./known";
import { addRow, changeRow, removeRow } from "./put-row";
import { type Written, write } from "./write";

/** Adds a standing order, or with an id makes that one what `draft` says; gives its id. Refused when its crop, its piece or the order is not on the farm. */
export const putOrder = (
  database: FarmDatabase,
  { id, ...draft }: StandingOrderDraft & { readonly id?: number },
): Written =>
  write(database, () => {
    const title = `${id === undefined ? "added" : "changed"} the standing order of ${draft.buyer}`;
    return { title, result: writeOrder(database, id, draft) };
  });

/** Takes a standing order out of the records. */
export const removeOrder = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const buyer = known(database, "standing_order", id);
    removeRow(database, standingOrder, id);
    return { title: `removed the standing order of ${buyer}`, result: id };
  });

/** The same inside a change that is open. */
export function writeOrder(database: FarmDatabase, id: number | undefined, draft: StandingOrderDraft): number {
  if (draft.cropId !== null) known(database, "crop", draft.cropId, "cropId");
  if (draft.recipeId !== null) known(database, "recipe", draft.recipeId, "recipeId");
  if (id === undefined) return addRow(database, standingOrder, draft);
  known(database, "standing_order", id);
  changeRow(database, standingOrder, id, draft);
  return id;
}
