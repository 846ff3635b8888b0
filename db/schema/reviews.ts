import { integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { ROLES } from "#lib/domain/words";
import { booking } from "./bookings";
import { checks, holds, isWholeFrom, oneOf } from "./checks";
import { idOf, rowId } from "./columns";

/** What became of the stems of an event: one row for each booking and role. It goes with its booking. */
export const review = sqliteTable(
  "review",
  {
    id: rowId(),
    bookingId: idOf("booking_id", () => booking.id, "cascade"),
    role: text("role", { enum: ROLES }).notNull(),
    plannedStems: integer("planned_stems").notNull(),
    cutStems: integer("cut_stems").notNull(),
    boughtStems: integer("bought_stems").notNull(),
    thrownAwayStems: integer("thrown_away_stems").notNull(),
  },
  (table) => [
    uniqueIndex("review_once").on(table.bookingId, table.role),
    ...checks(
      "review",
      oneOf("role", ROLES),
      isWholeFrom("planned_stems", 0),
      isWholeFrom("cut_stems", 0),
      isWholeFrom("bought_stems", 0),
      isWholeFrom("thrown_away_stems", 0),
      holds("thrown_away_within_had", "thrown_away_stems <= cut_stems + bought_stems"),
    ),
  ],
);
