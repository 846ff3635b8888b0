import { sql } from "drizzle-orm";
import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { bed } from "./beds";
import { booking } from "./bookings";
import { checks, holds, isDay, isWholeFrom, isYesNo } from "./checks";
import { idOf, rowId, yesNo } from "./columns";
import { variety } from "./crops";

/** What was cut: one row for each day, bed, variety and booking. What a cut names stays while the cut stands. */
export const cut = sqliteTable(
  "cut",
  {
    id: rowId(),
    cutOn: text("cut_on").notNull(),
    bedId: idOf("bed_id", () => bed.id, "restrict"),
    varietyId: idOf("variety_id", () => variety.id, "restrict"),
    bookingId: integer("booking_id").references(() => booking.id, { onDelete: "restrict" }),
    stemsCut: integer("stems_cut").notNull(),
    stemsAsked: integer("stems_asked"),
    goodStems: integer("good_stems"),
    restStands: yesNo("rest_stands").notNull().default(false),
  },
  (table) => [
    uniqueIndex("cut_once").on(table.cutOn, table.bedId, table.varietyId, table.bookingId),
    // In an index every NULL is another.
    uniqueIndex("cut_for_nobody_once").on(table.cutOn, table.bedId, table.varietyId).where(sql`booking_id IS NULL`),
    index("cut_bed").on(table.bedId),
    index("cut_variety").on(table.varietyId),
    index("cut_booking").on(table.bookingId),
    ...checks(
      "cut",
      isDay("cut_on"),
      isWholeFrom("stems_cut", 0),
      isWholeFrom("stems_asked", 0),
      isWholeFrom("good_stems", 0),
      isYesNo("rest_stands"),
      holds("good_within_cut", "good_stems <= stems_cut"),
    ),
  ],
);
