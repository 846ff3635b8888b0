import { sql } from "drizzle-orm";
import { foreignKey, integer, real, sqliteTable, text, uniqueIndex } from "drizzle-orm/sqlite-core";
import { MARKS } from "#lib/domain/sourced";
import { TREATMENTS } from "#lib/domain/words";
import { planting } from "./beds";
import { checks, holds, isFromZero, isList, isMonthDay, isShare, isWholeFrom, oneOf } from "./checks";
import { idOf, list, rowId } from "./columns";
import { crop, variety } from "./crops";

/** Bloom curves: one for each crop, variety (or the whole crop, when empty), planting (or all of the variety, when empty) and treatment. */
export const bloomCurve = sqliteTable(
  "bloom_curve",
  {
    id: rowId(),
    cropId: idOf("crop_id", () => crop.id, "cascade"),
    varietyId: integer("variety_id"),
    treatment: text("treatment").notNull(),
    anchorKind: text("anchor_kind").notNull(),
    firstCut: text("first_cut"),
    daysAfterPlanting: integer("days_after_planting"),
    stemsPerPlantByWeek: list("stems_per_plant_by_week").notNull(),
    firstCutSpreadDays: real("first_cut_spread_days").notNull(),
    yieldSpread: real("yield_spread").notNull(),
    timingMark: text("timing_mark").notNull(),
    timingSource: text("timing_source"),
    yieldMark: text("yield_mark").notNull(),
    yieldSource: text("yield_source"),
    note: text("note").notNull(),
    heatBaseC: real("heat_base_c"),
    heatCeilingC: real("heat_ceiling_c"),
    heatLimitC: real("heat_limit_c"),
    heatFrom: text("heat_from"),
    heatPlace: text("heat_place"),
    heatMark: text("heat_mark").notNull().default("own"),
    heatSource: text("heat_source"),
    ends: text("ends").notNull().default("weeks"),
    endHighC: real("end_high_c"),
    sowingDays: integer("sowing_days"),
    laterDays: integer("later_days").notNull().default(0),
    lateLossShare: real("late_loss_share"),
    shareByAge: list("share_by_age").notNull().default([]),
    saleableBySeason: list("saleable_by_season").notNull().default([]),
    learned: list("learned").notNull().default([]),
    plantingId: integer("planting_id").references(() => planting.id, { onDelete: "cascade" }),
  },
  (table) => [
    uniqueIndex("bloom_curve_of_crop_once").on(table.cropId, table.treatment).where(sql`variety_id IS NULL`),
    uniqueIndex("bloom_curve_of_variety_once").on(table.varietyId, table.treatment).where(sql`planting_id IS NULL`),
    uniqueIndex("bloom_curve_of_planting_once").on(table.plantingId, table.treatment),
    foreignKey({
      name: "bloom_curve_variety_of_crop",
      columns: [table.varietyId, table.cropId],
      foreignColumns: [variety.id, variety.cropId],
    })
      .onDelete("cascade")
      .onUpdate("cascade"),
    ...checks(
      "bloom_curve",
      oneOf("treatment", TREATMENTS),
      holds(
        "anchor",
        "(anchor_kind = 'day-of-year' AND first_cut IS NOT NULL AND days_after_planting IS NULL) OR " +
          "(anchor_kind = 'days-after-planting' AND first_cut IS NULL AND days_after_planting IS NOT NULL)",
      ),
      holds("of_planting", "planting_id IS NULL OR variety_id IS NOT NULL"),
      isMonthDay("first_cut"),
      isWholeFrom("days_after_planting", 0),
      isList("stems_per_plant_by_week"),
      isFromZero("first_cut_spread_days"),
      isFromZero("yield_spread"),
      oneOf("timing_mark", MARKS),
      oneOf("yield_mark", MARKS),
      holds("ends", "ends IN ('weeks', 'frost', 'heat') AND (ends = 'heat') = (end_high_c IS NOT NULL)"),
      isList("share_by_age"),
      isList("saleable_by_season"),
      isList("learned"),
      isWholeFrom("sowing_days", 0),
      isShare("late_loss_share"),
      holds("later_days", "later_days BETWEEN -365 AND 365 AND later_days = CAST(later_days AS INTEGER)"),
      holds("heat_limit_c", "heat_limit_c IS NULL OR (heat_ceiling_c IS NOT NULL AND heat_limit_c > heat_ceiling_c)"),
      isMonthDay("heat_from"),
      oneOf("heat_mark", MARKS),
      holds(
        "heat",
        "(heat_base_c IS NULL) = (heat_from IS NULL) AND (heat_ceiling_c IS NULL OR (heat_base_c IS NOT NULL AND heat_ceiling_c > heat_base_c))",
      ),
    ),
  ],
);
