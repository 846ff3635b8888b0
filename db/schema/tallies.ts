import { index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { bed } from "./beds";
import { checks, isDay, isList, isWholeFrom, isYesNo } from "./checks";
import { idOf, list, rowId, yesNo } from "./columns";
import { variety } from "./crops";

/**
 * Who counted how many stems of a row of a day's list. The stems themselves stand in `cut`; a tally goes with the record it was added to, so that a bed
 * or variety that it names is kept by the cut. `takenAt` is the change that took it, `correctedAt` the one that corrected the record last since.
 */
export const tally = sqliteTable(
  "tally",
  {
    id: rowId(),
    cutOn: text("cut_on").notNull(),
    bedId: idOf("bed_id", () => bed.id, "cascade"),
    varietyId: idOf("variety_id", () => variety.id, "cascade"),
    asked: list("asked").notNull(),
    stemsCut: integer("stems_cut").notNull(),
    countedAt: text("counted_at").notNull(),
    countedBy: text("counted_by"),
    takenAt: integer("taken_at").notNull(),
    correctedAt: integer("corrected_at"),
    isApart: yesNo("is_apart").notNull().default(false),
    restStands: yesNo("rest_stands").notNull().default(false),
  },
  (table) => [
    index("tally_place").on(table.cutOn, table.bedId, table.varietyId),
    index("tally_bed").on(table.bedId),
    index("tally_variety").on(table.varietyId),
    ...checks(
      "tally",
      isDay("cut_on"),
      isWholeFrom("stems_cut", 0),
      isWholeFrom("taken_at", 0),
      isWholeFrom("corrected_at", 0),
      isList("asked"),
      isYesNo("is_apart"),
      isYesNo("rest_stands"),
    ),
  ],
);
