import { index, integer, real, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import { TREATMENTS } from "#lib/domain/words";
import {
  checks,
  holds,
  isAboveZero,
  isDay,
  isFromZero,
  isList,
  isNamed,
  isShare,
  isWholeFrom,
  isYesNo,
  oneOf,
} from "./checks";
import { idOf, list, rowId, yesNo } from "./columns";
import { variety } from "./crops";

/** Beds. A spray has both its days or neither. */
export const bed = sqliteTable(
  "bed",
  {
    id: rowId(),
    name: text("name").notNull(),
    lengthMetres: real("length_metres").notNull(),
    widthMetres: real("width_metres").notNull(),
    flags: list("flags").notNull(),
    noEntryFrom: text("no_entry_from"),
    noEntryUntil: text("no_entry_until"),
    note: text("note").notNull(),
  },
  (table) => [
    unique("bed_name_once").on(table.name),
    ...checks(
      "bed",
      isNamed("name"),
      isAboveZero("length_metres"),
      isAboveZero("width_metres"),
      isList("flags"),
      isDay("no_entry_from"),
      isDay("no_entry_until"),
      holds(
        "spray_days",
        "(no_entry_from IS NULL) = (no_entry_until IS NULL) AND coalesce(no_entry_until > no_entry_from, 1)",
      ),
    ),
  ],
);

/** Plantings: a variety in a bed for a season. They go with their bed; a variety stays while a planting names it. */
export const planting = sqliteTable(
  "planting",
  {
    id: rowId(),
    bedId: idOf("bed_id", () => bed.id, "cascade"),
    varietyId: idOf("variety_id", () => variety.id, "restrict"),
    seasonYear: integer("season_year").notNull(),
    treatment: text("treatment").notNull(),
    plantedOn: text("planted_on").notNull(),
    plantCount: integer("plant_count").notNull(),
    aliveShare: real("alive_share").notNull(),
    gradeOutShare: real("grade_out_share").notNull(),
    winterSurvivalShare: real("winter_survival_share"),
    flags: list("flags").notNull(),
    ageSeasons: integer("age_seasons"),
    sown: yesNo("sown").notNull().default(false),
    daysLate: integer("days_late"),
    yieldFactor: real("yield_factor"),
    gradeOutTold: yesNo("grade_out_told").notNull().default(true),
  },
  (table) => [
    index("planting_bed").on(table.bedId),
    index("planting_variety").on(table.varietyId),
    ...checks(
      "planting",
      isWholeFrom("season_year", 1990),
      oneOf("treatment", TREATMENTS),
      isDay("planted_on"),
      isWholeFrom("plant_count", 0),
      isShare("alive_share"),
      isShare("grade_out_share"),
      isShare("winter_survival_share"),
      isList("flags"),
      isWholeFrom("age_seasons", 1),
      isYesNo("sown"),
      isYesNo("grade_out_told"),
      holds("days_late", "days_late BETWEEN -120 AND 120 AND days_late = CAST(days_late AS INTEGER)"),
      isFromZero("yield_factor"),
    ),
  ],
);

/** Stems standing in the cooler. */
export const coolerStock = sqliteTable(
  "cooler_stock",
  {
    id: rowId(),
    varietyId: idOf("variety_id", () => variety.id, "restrict"),
    cutOn: text("cut_on").notNull(),
    stemCount: integer("stem_count").notNull(),
  },
  (table) => [
    index("cooler_stock_variety").on(table.varietyId),
    ...checks("cooler_stock", isDay("cut_on"), isWholeFrom("stem_count", 0)),
  ],
);
