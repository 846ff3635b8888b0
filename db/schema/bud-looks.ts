import { index, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { BUD_SIGNS } from "#lib/domain/records/bud-look";
import { bed } from "./beds";
import { checks, isDay, isWholeFrom, oneOf } from "./checks";
import { idOf, rowId } from "./columns";
import { variety } from "./crops";

/** What the buds looked like: one row for each day, bed and variety. It goes with its bed and its variety. */
export const budLook = sqliteTable(
  "bud_look",
  {
    id: rowId(),
    lookedOn: text("looked_on").notNull(),
    bedId: idOf("bed_id", () => bed.id, "cascade"),
    varietyId: idOf("variety_id", () => variety.id, "cascade"),
    sign: text("sign", { enum: BUD_SIGNS }).notNull(),
    daysToCut: integer("days_to_cut"),
  },
  (table) => [
    uniqueIndex("bud_look_once").on(table.lookedOn, table.bedId, table.varietyId),
    index("bud_look_bed").on(table.bedId),
    index("bud_look_variety").on(table.varietyId),
    ...checks("bud_look", isDay("looked_on"), oneOf("sign", BUD_SIGNS), isWholeFrom("days_to_cut", 0)),
  ],
);
