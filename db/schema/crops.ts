import { integer, real, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import { MARKS } from "#lib/domain/sourced";
import { COLOURS, ROLES, SHAPES } from "#lib/domain/words";
import { checks, isFromZero, isList, isNamed, isNumber, isWholeFrom, isYesNo, oneOf } from "./checks";
import { idOf, list, rowId, yesNo } from "./columns";

/** Crops (species). Each number has its mark and, where there is one, its source beside it. */
export const crop = sqliteTable(
  "crop",
  {
    id: rowId(),
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
    stretchDays: real("stretch_days").notNull().default(0),
    stretchDaysMark: text("stretch_days_mark").notNull().default("from memory"),
    stretchDaysSource: text("stretch_days_source"),
    dryHoldDays: real("dry_hold_days").notNull().default(0),
    dryHoldDaysMark: text("dry_hold_days_mark").notNull().default("from memory"),
    dryHoldDaysSource: text("dry_hold_days_source"),
    holdUpToC: real("hold_up_to_c").notNull().default(5),
    holdUpToCMark: text("hold_up_to_c_mark").notNull().default("from memory"),
    holdUpToCSource: text("hold_up_to_c_source"),
    notColderC: real("not_colder_c").notNull().default(0),
    notColderCMark: text("not_colder_c_mark").notNull().default("from memory"),
    notColderCSource: text("not_colder_c_source"),
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
      ...["field_days", "stretch_days", "dry_hold_days"].map(isFromZero),
      ...["hold_up_to_c", "not_colder_c"].map(isNumber),
      isWholeFrom("bunch_stems", 1),
      isWholeFrom("bucket_stems", 1),
      isWholeFrom("buy_in_cents", 1),
      ...[
        "hold_days",
        "stretch_days",
        "dry_hold_days",
        "hold_up_to_c",
        "not_colder_c",
        "field_days",
        "bunch_stems",
        "bucket_stems",
        "buy_in_cents",
      ].map((column) => oneOf(`${column}_mark`, MARKS)),
      isList("cautions"),
    ),
  ],
);

/** Varieties: a crop with a name and a colour. (id, crop) is unique so that a curve can be held to the crop of its variety. */
export const variety = sqliteTable(
  "variety",
  {
    id: rowId(),
    cropId: idOf("crop_id", () => crop.id, "restrict"),
    name: text("name").notNull(),
    colour: text("colour").notNull(),
  },
  (table) => [
    unique("variety_once").on(table.cropId, table.name),
    unique("variety_of_crop").on(table.id, table.cropId),
    ...checks("variety", isNamed("name"), oneOf("colour", COLOURS)),
  ],
);
