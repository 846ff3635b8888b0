import type { BookingRecord, CurveRecord, FarmRecords } from "#lib/domain/farm-records";
import { climateColumns } from "#lib/domain/records/climate";
import { anchorColumns } from "#lib/domain/records/curve";
import { FARM_SETTINGS, type Farm } from "#lib/domain/records/farm-settings";
import type { RecordOf } from "#lib/domain/records/field";
import { headingsOf, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import type { Snapshot } from "#lib/domain/snapshot";
import { cellsOf, writeCell } from "./columns";
import { csvText } from "./csv-text";
import { farmRecordsOf } from "./farm-records-of";

/** A sheet as a file: its name ("beds.csv") and its text. */
export type SheetText = { readonly name: string; readonly text: string };

/** What a row of a sheet says. */
type Row<Name extends SheetName> = RecordOf<(typeof SHEETS)[Name]>;

/**
 * All sheets of a farm, one file each, in the order of {@link SHEETS}; the rows stand in the order of the snapshot, so that the
 * same farm gives the same text. RFC 4180: lines end in CRLF, cells are quoted where they must be. A text that a spreadsheet
 * would run gets an apostrophe before it, which the reader takes off again: what is written reads back to the same records.
 *
 * Source: RFC 4180, section 2, https://www.rfc-editor.org/rfc/rfc4180
 */
export const farmSheets = (snapshot: Snapshot): SheetText[] => sheetsOfRecords(farmRecordsOf(snapshot));

/** The sheets of records; lists that are absent give sheets with a header alone. Decimals are written by the farm's mark, which its sheet names. */
export function sheetsOfRecords({ farm, bookings = [], ...records }: FarmRecords): SheetText[] {
  const sheet = <Name extends SheetName>(name: Name, rows: readonly Row<Name>[]): SheetText => {
    const cells = rows.map((row) => cellsOf(SHEETS[name], row, farm?.decimalMark));
    return { name: `${name}.csv`, text: csvText([headingsOf(name), ...cells]) };
  };
  return [
    sheet("farm", farm ? settingRows(farm) : []),
    sheet("crops", records.crops ?? []),
    sheet("curves", (records.curves ?? []).map(curveRow)),
    sheet(
      "recipes",
      (records.recipes ?? []).flatMap(({ lines, ...recipe }) => lines.map((line) => ({ ...recipe, ...line }))),
    ),
    sheet("varieties", records.varieties ?? []),
    sheet("beds", records.beds ?? []),
    sheet("plantings", records.plantings ?? []),
    sheet("bookings", bookings.map(bookingRow)),
    sheet(
      "pieces",
      bookings.flatMap(({ pieces, ...booking }) => pieces.map((piece) => ({ ...booking, ...piece }))),
    ),
    sheet(
      "stems",
      bookings.flatMap(({ stemLines, ...booking }) => stemLines.map((line) => ({ ...booking, ...line }))),
    ),
    sheet("cooler", records.coolerStock ?? []),
    sheet("weather", records.weather ?? []),
  ];
}

function settingRows(farm: Farm): Row<"farm">[] {
  const groups = { ...farm, climate: climateColumns(farm.climate) };
  return FARM_SETTINGS.map(({ heading, group, name, field }) => {
    const values: Record<string, unknown> = group ? groups[group] : farm;
    return { setting: heading, value: writeCell(field, values[name], farm.decimalMark) };
  });
}

const curveRow = ({ anchor, ...curve }: CurveRecord): Row<"curves"> => ({ ...curve, ...anchorColumns(anchor) });

const bookingRow = ({ unacceptableCrops, ...booking }: BookingRecord): Row<"bookings"> => ({
  ...booking,
  unacceptableCrops: [...unacceptableCrops],
});
