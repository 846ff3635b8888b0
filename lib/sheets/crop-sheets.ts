import { z } from "zod";
import { anchorSchema, bloomCurveSchema } from "#lib/domain/bloom-curve";
import { cropSchema } from "#lib/domain/crop";
import type { CropRecord, CurveRecord, VarietyRecord } from "#lib/domain/farm-records";
import { choice, decimal, listOf, monthDay, origin, prose, whole, word, yesNo } from "#lib/domain/records/kinds";
import { varietySchema } from "#lib/domain/records/variety";
import { type Origin, OWN, originSchema } from "#lib/domain/sourced";
import { COLOURS, ROLES, SHAPES, TREATMENTS } from "#lib/domain/words";
import { type ColumnsOf, maybe, needed, type RowOf } from "./columns";
import type { Say } from "./sheet-rows";

const crop = cropSchema.shape;
const curve = bloomCurveSchema.shape;
const [dayOfYear, daysAfterPlanting] = anchorSchema.options;
const name = z.string().trim();

/** The origin of a number from the user's own sheet, unless the sheet names another. */
const originColumn = maybe(origin, originSchema, OWN);

/**
 * A crop a row. Absent or empty: `scientific`, `cut_stage` and `cautions` say nothing, `usual_role` is the first of `roles`, `tender`
 * and `overwinters` are no, and each origin is "own".
 */
export const CROP_COLUMNS = {
  crop: needed(word, name.pipe(crop.name)),
  scientific: maybe(prose, crop.scientific, ""),
  shape: needed(choice(SHAPES), crop.shape),
  roles: needed(listOf(choice(ROLES)), crop.roles),
  usual_role: maybe(choice(ROLES), crop.usualRole, null),
  tender: maybe(yesNo, crop.tender, false),
  overwinters: maybe(yesNo, crop.overwinters, false),
  hold_days: needed(decimal, crop.holdDays.shape.count),
  hold_origin: originColumn,
  field_days: needed(decimal, crop.fieldDays.shape.count),
  field_origin: originColumn,
  bunch_stems: needed(decimal, crop.bunchStems.shape.count),
  bunch_origin: originColumn,
  bucket_stems: needed(decimal, crop.bucketStems.shape.count),
  bucket_origin: originColumn,
  buy_in_cents: needed(decimal, crop.buyInCents.shape.count),
  buy_in_origin: originColumn,
  cut_stage: maybe(prose, crop.cutStage, ""),
  cautions: maybe(listOf(word), crop.cautions, []),
} satisfies ColumnsOf<"crops">;

const sourced = (count: number, { mark, source }: Origin) => ({ count, mark, source });

export function toCropRecord(row: RowOf<typeof CROP_COLUMNS>): CropRecord | null {
  const usualRole = row.usual_role ?? row.roles[0];
  if (!usualRole) return null;
  return {
    name: row.crop,
    scientific: row.scientific,
    shape: row.shape,
    roles: row.roles,
    usualRole,
    tender: row.tender,
    overwinters: row.overwinters,
    holdDays: sourced(row.hold_days, row.hold_origin),
    fieldDays: sourced(row.field_days, row.field_origin),
    bunchStems: sourced(row.bunch_stems, row.bunch_origin),
    bucketStems: sourced(row.bucket_stems, row.bucket_origin),
    buyInCents: sourced(row.buy_in_cents, row.buy_in_origin),
    cutStage: row.cut_stage,
    cautions: row.cautions,
  };
}

/**
 * A bloom curve a row. `variety` empty: the curve of the whole crop. Exactly one of `first_cut` and `days_after_planting` is filled.
 * Absent or empty: `note` says nothing, and each origin is "own". The two spreads are asked for: there is no honest default.
 */
export const CURVE_COLUMNS = {
  crop: needed(word, name),
  variety: maybe(word, name, null),
  treatment: needed(choice(TREATMENTS), curve.treatment),
  first_cut: maybe(monthDay, dayOfYear.shape.firstCut, null),
  days_after_planting: maybe(whole, daysAfterPlanting.shape.days, null),
  stems_per_plant_by_week: needed(listOf(decimal), curve.stemsPerPlantByWeek),
  first_cut_spread_days: needed(decimal, curve.firstCutSpreadDays),
  yield_spread: needed(decimal, curve.yieldSpread),
  timing_origin: originColumn,
  yield_origin: originColumn,
  note: maybe(prose, curve.note, ""),
} satisfies ColumnsOf<"curves">;

export function toCurveRecord(row: RowOf<typeof CURVE_COLUMNS>, say: Say): CurveRecord | null {
  const { first_cut: firstCut, days_after_planting: days } = row;
  if ((firstCut === null) === (days === null)) {
    const count = firstCut === null ? "neither is filled" : "both are filled";
    say("first_cut", `first_cut and days_after_planting: ${count}, fill exactly one and leave the other empty`);
  }
  return {
    crop: row.crop,
    variety: row.variety,
    treatment: row.treatment,
    anchor: firstCut === null ? { kind: "days-after-planting", days: days ?? 0 } : { kind: "day-of-year", firstCut },
    stemsPerPlantByWeek: row.stems_per_plant_by_week,
    firstCutSpreadDays: row.first_cut_spread_days,
    yieldSpread: row.yield_spread,
    timingOrigin: row.timing_origin,
    yieldOrigin: row.yield_origin,
    note: row.note,
  };
}

/** A variety a row: the place for varieties that no planting names. All three columns are needed. */
export const VARIETY_COLUMNS = {
  crop: needed(word, name),
  variety: needed(word, varietySchema.shape.name),
  colour: needed(choice(COLOURS), varietySchema.shape.colour),
} satisfies ColumnsOf<"varieties">;

export const toVarietyRecord = (row: RowOf<typeof VARIETY_COLUMNS>): VarietyRecord => row;
