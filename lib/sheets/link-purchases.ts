import type { PurchaseRecord } from "#lib/domain/farm-records";
import { headingOf } from "#lib/domain/records/field";
import { oddPurchase, PURCHASE_SHEET } from "#lib/domain/records/purchase";
import { checkBooking } from "./link-cuts";
import { varietyOf } from "./link-ground";
import type { SeasonNames } from "./link-season";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** What was ordered from suppliers, for bookings of the farm or of the upload. Two like rows in one upload are two purchases. */
export function linkPurchases(
  sheet: SheetRows<RowOf<"purchases">>,
  { crops, varieties, owners }: Omit<SeasonNames, "beds">,
): SheetRows<PurchaseRecord> {
  return linkRows(sheet, (draft, say, { place }) => {
    checkBooking(draft, owners, say);
    const odd = oddPurchase(draft);
    for (const { field, message } of odd) say(headingOf(field, PURCHASE_SHEET[field]), message);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!variety || odd.length > 0) return null;
    varieties.enter(variety, place);
    return { ...draft, ...variety };
  });
}
