import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { booking } from "./bookings";
import { checks, holds, isDay, isNamed, isWholeFrom } from "./checks";
import { idOf, rowId } from "./columns";
import { variety } from "./crops";

/** What was ordered from suppliers, a flower a row. What a purchase names stays while it stands. */
export const purchase = sqliteTable(
  "purchase",
  {
    id: rowId(),
    supplier: text("supplier").notNull(),
    orderedOn: text("ordered_on").notNull(),
    arrivesOn: text("arrives_on").notNull(),
    varietyId: idOf("variety_id", () => variety.id, "restrict"),
    bunchCount: integer("bunch_count").notNull(),
    bunchStems: integer("bunch_stems").notNull(),
    bunchCents: integer("bunch_cents"),
    daysToOpen: integer("days_to_open").notNull(),
    bookingId: integer("booking_id").references(() => booking.id, { onDelete: "restrict" }),
    stemsForBooking: integer("stems_for_booking").notNull(),
    arrivedOn: text("arrived_on"),
    arrivedStems: integer("arrived_stems"),
  },
  (table) => [
    index("purchase_variety").on(table.varietyId),
    index("purchase_booking").on(table.bookingId),
    ...checks(
      "purchase",
      isNamed("supplier"),
      isDay("ordered_on"),
      isDay("arrives_on"),
      isWholeFrom("bunch_count", 1),
      isWholeFrom("bunch_stems", 1),
      isWholeFrom("bunch_cents", 0),
      isWholeFrom("days_to_open", 0),
      isWholeFrom("stems_for_booking", 0),
      isDay("arrived_on"),
      isWholeFrom("arrived_stems", 0),
      holds("days_in_order", "ordered_on <= arrives_on"),
      holds("arrived_both", "(arrived_on IS NULL) = (arrived_stems IS NULL)"),
    ),
  ],
);
