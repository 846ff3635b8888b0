import { sql } from "drizzle-orm";
import { foreignKey, integer, real, sqliteTable, text, unique, uniqueIndex } from "drizzle-orm/sqlite-core";
import { MARKS } from "#lib/domain/sourced";
import { COLOURS, ROLES, SHAPES, TREATMENTS } from "#lib/domain/words";
import { checks, holds, isFromZero, isList, isMonthDay, isNamed, isWholeFrom, isYesNo, oneOf } from "./checks";
import { list, yesNo } from "./columns";

/** Crops (species). Each number has its mark and, where there is one, its source beside it. */
export const crop = sqliteTable(
  "crop",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    name: text("name").notNull(),
    scientific: text("scientific").notNull(),
    shape: text("shape").notNull(),
    roles: list("roles").notNull(),
    usualRole: text("usual_role").notNull(),
    tender: yesNo("tender").notNull(),
    overwinters: yesNo("overwinters").notNull(),
    holdDays: real("hold_days").notNull(),
    holdDaysMark: text("hold_days_mark").notNull(),
    holdDaysSource: text("hold_days_source"),
    fieldDays: real("field_days").notNull(),
    fieldDaysMark: text("field_days_mark").notNull(),
    fieldDaysSource: text("field_days_source"),
    bunchStems: integer("bunch_stems").notNull(),
    bunchStemsMark: text("bunch_stems_mark").notNull(),
    bunchStemsSource: text("bunch_stems_source"),
    bucketStems: integer("bucket_stems").notNull(),
    bucketStemsMark: text("bucket_stems_mark").notNull(),
    bucketStemsSource: text("bucket_stems_source"),
    buyInCents: integer("buy_in_cents").notNull(),
    buyInCentsMark: text("buy_in_cents_mark").notNull(),
    buyInCentsSource: text("buy_in_cents_source"),
    cutStage: text("cut_stage").notNull(),
    cautions: list("cautions").notNull(),
  },
  (table) => [
    unique("crop_name_once").on(table.name),
    ...checks(
      "crop",
      isNamed("name"),
      oneOf("shape", SHAPES),
      isList("roles"),
      oneOf("usual_role", ROLES),
      isYesNo("tender"),
      isYesNo("overwinters"),
      isFromZero("hold_days"),
      isFromZero("field_days"),
      isWholeFrom("bunch_stems", 1),
      isWholeFrom("bucket_stems", 1),
      isWholeFrom("buy_in_cents", 1),
      ...["hold_days_mark", "field_days_mark", "bunch_stems_mark", "bucket_stems_mark", "buy_in_cents_mark"].map(
        (column) => oneOf(column, MARKS),
      ),
      isList("cautions"),
    ),
  ],
);

/** Varieties: a crop with a name and a colour. (id, crop) is unique so that a curve can be held to the crop of its variety. */
export const variety = sqliteTable(
  "variety",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    cropId: integer("crop_id")
      .notNull()
      .references(() => crop.id, { onDelete: "restrict" }),
    name: text("name").notNull(),
    colour: text("colour").notNull(),
  },
  (table) => [
    unique("variety_once").on(table.cropId, table.name),
    unique("variety_of_crop").on(table.id, table.cropId),
    ...checks("variety", isNamed("name"), oneOf("colour", COLOURS)),
  ],
);

/** Bloom curves: one for each crop, variety (or the whole crop, when empty) and treatment. */
export const bloomCurve = sqliteTable(
  "bloom_curve",
  {
    id: integer("id").primaryKey({ autoIncrement: true }),
    cropId: integer("crop_id")
      .notNull()
      .references(() => crop.id, { onDelete: "cascade" }),
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
    heatFrom: text("heat_from"),
    heatPlace: text("heat_place"),
    heatMark: text("heat_mark").notNull().default("own"),
    heatSource: text("heat_source"),
    ends: text("ends").notNull().default("weeks"),
    endHighC: real("end_high_c"),
  },
  (table) => [
    uniqueIndex("bloom_curve_of_crop_once").on(table.cropId, table.treatment).where(sql`variety_id IS NULL`),
    uniqueIndex("bloom_curve_of_variety_once").on(table.varietyId, table.treatment),
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
      isMonthDay("first_cut"),
      isWholeFrom("days_after_planting", 0),
      isList("stems_per_plant_by_week"),
      isFromZero("first_cut_spread_days"),
      isFromZero("yield_spread"),
      oneOf("timing_mark", MARKS),
      oneOf("yield_mark", MARKS),
      holds("ends", "ends IN ('weeks', 'frost', 'heat') AND (ends = 'heat') = (end_high_c IS NOT NULL)"),
      isMonthDay("heat_from"),
      oneOf("heat_mark", MARKS),
      holds(
        "heat",
        "(heat_base_c IS NULL) = (heat_from IS NULL) AND (heat_ceiling_c IS NULL OR (heat_base_c IS NOT NULL AND heat_ceiling_c > heat_base_c))",
      ),
    ),
  ],
);
