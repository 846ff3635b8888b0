import type { OrderRecord } from "#lib/domain/farm-records";
import { headingOf } from "#lib/domain/records/field";
import { ORDER_SHEET, oddOrder } from "#lib/domain/records/standing-order";
import type { NameBook } from "./name-book";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** Standing orders of known crops and pieces. Two alike in one upload are two orders. */
export function linkOrders(
  sheet: SheetRows<RowOf<"orders">>,
  { crops, recipes }: { readonly crops: NameBook; readonly recipes: NameBook },
): SheetRows<OrderRecord> {
  return linkRows(sheet, (draft, say) => {
    const named = (book: NameBook, name: string | null, column: string) => {
      const found = name === null ? null : book.find(name);
      if (found && !found.ok) say(column, found.message);
      return found?.ok ? found.name : name;
    };
    for (const { field, message } of oddOrder({ ...draft, recipeId: draft.recipe }))
      say(headingOf(field, ORDER_SHEET[field]), message);
    return { ...draft, crop: named(crops, draft.crop, "crop"), recipe: named(recipes, draft.recipe, "recipe") };
  });
}
