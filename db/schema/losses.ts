import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { LOSS_CAUSES } from "#lib/domain/records/loss";
import { bed } from "./beds";
import { checks, holds, isDay, isWholeFrom, oneOf } from "./checks";
import { idOf, rowId } from "./columns";
import { variety } from "./crops";

/** What was left of plants: one row for each day, bed, variety and cause. It goes with its bed and its variety. */
export const loss = sqliteTable(
  "loss",
  {
    id: rowId(),
    seenOn: text("seen_on").notNull(),
    bedId: idOf("bed_id", () => bed.id, "cascade"),
    varietyId: idOf("variety_id", () => variety.id, "cascade"),
    cause: text("cause", { enum: LOSS_CAUSES }).notNull(),
    plantsBefore: integer("plants_before").notNull(),
    plantsLeft: integer("plants_left").notNull(),
  },
  (table) => [
    uniqueIndex("loss_once").on(table.seenOn, table.bedId, table.varietyId, table.cause),
    index("loss_bed").on(table.bedId),
    index("loss_variety").on(table.varietyId),
    ...checks(
      "loss",
      isDay("seen_on"),
      oneOf("cause", LOSS_CAUSES),
      isWholeFrom("plants_before", 1),
      isWholeFrom("plants_left", 0),
      holds("left_of_before", "plants_left <= plants_before"),
    ),
  ],
);
