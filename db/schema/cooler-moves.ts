import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { MOVE_KINDS } from "#lib/domain/records/cooler-move";
import { booking } from "./bookings";
import { checks, isDay, isWholeFrom, oneOf } from "./checks";
import { idOf, rowId } from "./columns";
import { variety } from "./crops";

/** What left the cooler: a row for each time that stems of a lot (a variety cut on a day) were taken out or thrown away. What a move names stays while it stands. */
export const coolerMove = sqliteTable(
  "cooler_move",
  {
    id: rowId(),
    movedOn: text("moved_on").notNull(),
    varietyId: idOf("variety_id", () => variety.id, "restrict"),
    cutOn: text("cut_on").notNull(),
    kind: text("kind", { enum: MOVE_KINDS }).notNull(),
    stemCount: integer("stem_count").notNull(),
    bookingId: integer("booking_id").references(() => booking.id, { onDelete: "restrict" }),
  },
  (table) => [
    index("cooler_move_variety").on(table.varietyId),
    index("cooler_move_booking").on(table.bookingId),
    ...checks(
      "cooler_move",
      isDay("moved_on"),
      isDay("cut_on"),
      oneOf("kind", MOVE_KINDS),
      isWholeFrom("stem_count", 1),
    ),
  ],
);
