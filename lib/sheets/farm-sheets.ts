import type { Farm } from "#lib/domain/farm";
import type { BookingRecord, CurveRecord, FarmRecords } from "#lib/domain/farm-records";
import { FARM_SETTINGS } from "#lib/domain/farm-settings";
import { COOLER_SHEET } from "#lib/domain/records/cooler-lot";
import { listOf, origin, weekday, word, yesNo as yesOrNo } from "#lib/domain/records/kinds";
import { type ColumnOf, SHEET_COLUMNS, type SheetName } from "#lib/domain/sheet-columns";
import type { Snapshot } from "#lib/domain/snapshot";
import { cellsOf } from "./columns";
import { csvText } from "./csv-text";
import { farmRecordsOf } from "./farm-records-of";

/** A sheet as a file: its name ("beds.csv") and its text. */
export type SheetText = { readonly name: string; readonly text: string };

/** A row by column: every column of the sheet, none else. */
type Row<Name extends SheetName> = { readonly [Column in ColumnOf<Name>]: string };

/**
 * All sheets of a farm, one file each, in the order of {@link SHEET_COLUMNS}; the rows stand in the order of the snapshot, so that the
 * same farm gives the same text. RFC 4180: lines end in CRLF, cells are quoted where they must be. A text that a spreadsheet
 * would run gets an apostrophe before it, which the reader takes off again: what is written reads back to the same records.
 *
 * Source: RFC 4180, section 2, https://www.rfc-editor.org/rfc/rfc4180
 */
export const farmSheets = (snapshot: Snapshot): SheetText[] => sheetsOfRecords(farmRecordsOf(snapshot));

/** The sheets of records; lists that are absent give sheets with a header alone. */
export function sheetsOfRecords(records: FarmRecords): SheetText[] {
  const bookings = records.bookings ?? [];
  return [
    sheet("farm", records.farm ? settingRows(records.farm) : []),
    sheet("crops", (records.crops ?? []).map(cropRow)),
    sheet("curves", (records.curves ?? []).map(curveRow)),
    sheet("recipes", (records.recipes ?? []).flatMap(recipeRows)),
    sheet(
      "varieties",
      (records.varieties ?? []).map(({ crop, variety, colour }) => ({ crop, variety, colour })),
    ),
    sheet("beds", (records.beds ?? []).map(bedRow)),
    sheet("plantings", (records.plantings ?? []).map(plantingRow)),
    sheet("bookings", bookings.map(bookingRow)),
    sheet("pieces", bookings.flatMap(pieceRows)),
    sheet("stems", bookings.flatMap(stemRows)),
    sheet(
      "cooler",
      (records.coolerStock ?? []).map((lot) => cellsOf(COOLER_SHEET, lot)),
    ),
  ];
}

function sheet<Name extends SheetName>(name: Name, rows: readonly Readonly<Record<string, string>>[]): SheetText {
  const columns: readonly ColumnOf<Name>[] = SHEET_COLUMNS[name];
  const cells = rows.map((row) => columns.map((column) => row[column]));
  return { name: `${name}.csv`, text: csvText([columns, ...cells]) };
}

type RecordOf<Key extends keyof FarmRecords> = NonNullable<FarmRecords[Key]> extends readonly (infer T)[] ? T : never;

function settingRows(farm: Farm): Row<"farm">[] {
  return FARM_SETTINGS.map(({ name, group, field }) => {
    const fields: Record<string, unknown> = group ? farm[group] : farm;
    return { setting: name, value: settingCell(fields[field]) };
  });
}

function settingCell(setting: unknown): string {
  if (typeof setting === "boolean") return yesNo(setting);
  if (Array.isArray(setting)) return weekdaysCell(setting);
  return setting === null ? "" : String(setting);
}

const cropRow = (crop: RecordOf<"crops">): Row<"crops"> => ({
  crop: crop.name,
  scientific: crop.scientific,
  shape: crop.shape,
  roles: listCell(crop.roles),
  usual_role: crop.usualRole,
  tender: yesNo(crop.tender),
  overwinters: yesNo(crop.overwinters),
  hold_days: numberCell(crop.holdDays.count),
  hold_origin: originCell(crop.holdDays),
  field_days: numberCell(crop.fieldDays.count),
  field_origin: originCell(crop.fieldDays),
  bunch_stems: numberCell(crop.bunchStems.count),
  bunch_origin: originCell(crop.bunchStems),
  bucket_stems: numberCell(crop.bucketStems.count),
  bucket_origin: originCell(crop.bucketStems),
  buy_in_cents: numberCell(crop.buyInCents.count),
  buy_in_origin: originCell(crop.buyInCents),
  cut_stage: crop.cutStage,
  cautions: listCell(crop.cautions),
});

const curveRow = (curve: CurveRecord): Row<"curves"> => ({
  crop: curve.crop,
  variety: curve.variety ?? "",
  treatment: curve.treatment,
  first_cut: curve.anchor.kind === "day-of-year" ? curve.anchor.firstCut : "",
  days_after_planting: curve.anchor.kind === "days-after-planting" ? numberCell(curve.anchor.days) : "",
  stems_per_plant_by_week: listCell(curve.stemsPerPlantByWeek),
  first_cut_spread_days: numberCell(curve.firstCutSpreadDays),
  yield_spread: numberCell(curve.yieldSpread),
  timing_origin: originCell(curve.timingOrigin),
  yield_origin: originCell(curve.yieldOrigin),
  note: curve.note,
});

const recipeRows = ({ name, unit, origin, lines }: RecordOf<"recipes">): Row<"recipes">[] =>
  lines.map(({ role, stemsPerPiece, colours }) => ({
    recipe: name,
    unit,
    role,
    stems_per_piece: numberCell(stemsPerPiece),
    colours,
    origin,
  }));

const bedRow = (bed: RecordOf<"beds">): Row<"beds"> => ({
  bed: bed.name,
  length_m: numberCell(bed.lengthMetres),
  width_m: numberCell(bed.widthMetres),
  flags: listCell(bed.flags),
  no_entry_from: bed.noEntryFrom ?? "",
  no_entry_until: bed.noEntryUntil ?? "",
  note: bed.note,
});

const plantingRow = (planting: RecordOf<"plantings">): Row<"plantings"> => ({
  bed: planting.bed,
  crop: planting.crop,
  variety: planting.variety,
  colour: planting.colour,
  season: numberCell(planting.seasonYear),
  treatment: planting.treatment,
  planted_on: planting.plantedOn,
  plants: numberCell(planting.plantCount),
  alive_share: numberCell(planting.aliveShare),
  grade_out_share: numberCell(planting.gradeOutShare),
  winter_survival_share: numberCell(planting.winterSurvivalShare),
  flags: listCell(planting.flags),
});

const bookingRow = (booking: BookingRecord): Row<"bookings"> => ({
  client: booking.client,
  event_on: booking.eventOn,
  status: booking.status,
  palette: listCell(booking.palette),
  spare_share: numberCell(booking.spareShare),
  not_wanted: listCell(booking.unacceptableCrops),
  note: booking.note,
});

const pieceRows = ({ client, eventOn, pieces }: BookingRecord): Row<"pieces">[] =>
  pieces.map(({ recipe, pieceCount, colours }) => ({
    client,
    event_on: eventOn,
    recipe,
    count: numberCell(pieceCount),
    colours: listCell(colours),
  }));

const stemRows = ({ client, eventOn, stemLines }: BookingRecord): Row<"stems">[] =>
  stemLines.map(({ role, crop, cropOnly, colours, stemCount }) => ({
    client,
    event_on: eventOn,
    role,
    crop: crop ?? "",
    crop_only: yesNo(cropOnly),
    colours: listCell(colours),
    stems: numberCell(stemCount),
  }));

const yesNo = yesOrNo.write;
const originCell = origin.write;
const weekdaysCell = listOf(weekday).write;
const numberCell = (number: number | null): string => (number === null ? "" : String(number));
const listCell = (words: readonly (string | number)[]): string => listOf(word).write(words.map(String));
