import { sql } from "drizzle-orm";
import { foreignKey, integer, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { TREATMENTS } from "#lib/domain/words";
import { checks, holds, isDay, isWholeFrom, oneOf } from "./checks";
import { idOf, rowId } from "./columns";
import { crop, variety } from "./crops";

/** First cuts of past seasons: one for each crop, variety (or the whole crop, when empty), treatment, season and planting day. They go with their crop and variety. */
export const firstCut = sqliteTable(
  "first_cut",
  {
    id: rowId(),
    cropId: idOf("crop_id", () => crop.id, "cascade"),
    varietyId: integer("variety_id"),
    treatment: text("treatment", { enum: TREATMENTS }).notNull(),
    seasonYear: integer("season_year").notNull(),
    plantedOn: text("planted_on"),
    firstCut: text("first_cut").notNull(),
  },
  (table) => [
    // One index for each of what may be empty: SQLite takes any two empty cells as different.
    uniqueIndex("first_cut_once")
      .on(table.cropId, table.treatment, table.seasonYear)
      .where(sql`variety_id IS NULL AND planted_on IS NULL`),
    uniqueIndex("first_cut_planted_once")
      .on(table.cropId, table.treatment, table.seasonYear, table.plantedOn)
      .where(sql`variety_id IS NULL`),
    uniqueIndex("first_cut_of_variety_once")
      .on(table.varietyId, table.treatment, table.seasonYear)
      .where(sql`planted_on IS NULL`),
    uniqueIndex("first_cut_of_variety_planted_once").on(
      table.varietyId,
      table.treatment,
      table.seasonYear,
      table.plantedOn,
    ),
    foreignKey({
      name: "first_cut_variety_of_crop",
      columns: [table.varietyId, table.cropId],
      foreignColumns: [variety.id, variety.cropId],
    })
      .onDelete("cascade")
      .onUpdate("cascade"),
    ...checks(
      "first_cut",
      oneOf("treatment", TREATMENTS),
      isWholeFrom("season_year", 1700),
      isDay("planted_on"),
      isDay("first_cut"),
      holds("planted_before", "planted_on IS NULL OR planted_on < first_cut"),
    ),
  ],
);
