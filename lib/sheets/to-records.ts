import type { BedRecord, CropRecord, CurveRecord, RecipeRecord } from "#lib/domain/farm-records";
import { bedDraftSchema } from "#lib/domain/records/bed";
import { bloomEndSchema } from "#lib/domain/records/bloom-end";
import { headingOf, type RecordOf } from "#lib/domain/records/field";
import { heatSchema } from "#lib/domain/records/heat";
import type { SHEETS, SheetName } from "#lib/domain/records/sheets";
import { stemLineSchema } from "#lib/domain/records/stem-line";
import type { Say } from "./sheet-rows";

/** A row of a sheet, read cell by cell. Most are a record as they stand; here are those that are not, or that have rules over several cells. */
export type RowOf<Name extends SheetName> = RecordOf<(typeof SHEETS)[Name]>;

export function toBedRecord(bed: RowOf<"beds">, say: Say): BedRecord {
  for (const { message } of bedDraftSchema.safeParse(bed).error?.issues ?? [])
    say(
      "no_entry_until",
      `no_entry_from and no_entry_until do not go together: ${message}; write both days in order, or neither`,
    );
  return bed;
}

export function toCropRecord(crop: RowOf<"crops">): CropRecord | null {
  const usualRole = crop.usualRole ?? crop.roles[0];
  return usualRole ? { ...crop, usualRole } : null;
}

export function toCurveRecord(row: RowOf<"curves">, say: Say): CurveRecord {
  const { firstCut, daysAfterPlanting, bed: _, seasonYear: __, plantedOn: ___, ...curve } = row;
  if ((firstCut === null) === (daysAfterPlanting === null)) {
    const count = firstCut === null ? "neither is filled" : "both are filled";
    say("first_cut", `first_cut and days_after_planting: ${count}, fill exactly one and leave the other empty`);
  }
  const anchor =
    firstCut === null
      ? ({ kind: "days-after-planting", days: daysAfterPlanting ?? 0 } as const)
      : ({ kind: "day-of-year", firstCut } as const);
  const issues = [heatSchema, bloomEndSchema].flatMap((schema) => schema.safeParse(curve).error?.issues ?? []);
  for (const { message, path } of issues) say(headingOf(String(path[0]), {}), message);
  return { ...curve, anchor, ...ofPlanting(row, say) };
}

/** The one planting that a curve is for, when its row names one. */
function ofPlanting({ variety, bed, seasonYear, plantedOn }: RowOf<"curves">, say: Say): Pick<CurveRecord, "planting"> {
  const named = [variety, bed, seasonYear, plantedOn];
  if (bed !== null && seasonYear !== null && plantedOn !== null && variety !== null)
    return { planting: { bed, seasonYear, plantedOn } };
  if (named.slice(1).some((part) => part !== null))
    say(
      "bed",
      "variety, bed, season and planted_on name one planting together: fill all four, or leave the last three empty",
    );
  return {};
}

/** A recipe with one of its lines: rows of one name become one recipe. */
export const toRecipeLine = ({ role, stemsPerPiece, colours, asks, ...recipe }: RowOf<"recipes">): RecipeRecord => ({
  ...recipe,
  lines: [{ role, stemsPerPiece, colours, asks }],
});

export function toStemLine(row: RowOf<"stems">, say: Say): RowOf<"stems"> {
  const checked = stemLineSchema.safeParse({ ...row, cropId: row.crop === null ? null : 0 });
  for (const { message } of checked.error?.issues ?? [])
    say("crop", `crop_only is yes, and the crop is empty: ${message}`);
  return row;
}
