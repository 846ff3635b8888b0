import type { BookingOwners } from "./booking-owners";
import { linkCuts } from "./link-cuts";
import { linkMoves } from "./link-moves";
import { linkPurchases } from "./link-purchases";
import { linkBudLooks, linkLosses } from "./link-walked";
import type { NameBook } from "./name-book";
import type { SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";
import type { VarietyBook } from "./variety-book";

/** Names of the farm and of the upload that what happens in a season may have. */
export type SeasonNames = {
  readonly beds: NameBook;
  readonly crops: NameBook;
  readonly varieties: VarietyBook;
  readonly owners: BookingOwners;
};

/** The sheets of what is recorded as a season happens, linked. */
export const linkSeason = (
  rows: {
    readonly cuts: SheetRows<RowOf<"cuts">>;
    readonly moves: SheetRows<RowOf<"moves">>;
    readonly purchases: SheetRows<RowOf<"purchases">>;
    readonly buds: SheetRows<RowOf<"buds">>;
    readonly losses: SheetRows<RowOf<"losses">>;
  },
  names: SeasonNames,
) => ({
  cuts: linkCuts(rows.cuts, names),
  moves: linkMoves(rows.moves, names),
  purchases: linkPurchases(rows.purchases, names),
  buds: linkBudLooks(rows.buds, names),
  losses: linkLosses(rows.losses, names),
});
