import type { CoolerMoveRecord } from "#lib/domain/farm-records";
import { checkBooking } from "./link-cuts";
import { varietyOf } from "./link-ground";
import type { SeasonNames } from "./link-season";
import { linkRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/** Stems that left the cooler, for bookings of the farm or of the upload. Two like moves in one upload are two moves. */
export function linkMoves(
  sheet: SheetRows<RowOf<"moves">>,
  { crops, varieties, owners }: Omit<SeasonNames, "beds">,
): SheetRows<CoolerMoveRecord> {
  return linkRows(sheet, (draft, say, { place }) => {
    checkBooking(draft, owners, say);
    const variety = varietyOf(draft, crops, varieties, say);
    if (!variety) return null;
    varieties.enter(variety, place);
    return { ...draft, ...variety };
  });
}
