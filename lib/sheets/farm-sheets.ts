import type { FarmRecords } from "#lib/domain/farm-records";
import { headingsOf, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import type { Snapshot } from "#lib/domain/snapshot";
import { cellsOf } from "./columns";
import { csvText } from "./csv-text";
import { farmRecordsOf } from "./farm-records-of";
import { hasKeys, KEY_HEADING, type KeptRows, knownFarm } from "./known-farm";
import { type RowsBySheet, rowsOfRecords } from "./rows-of-records";

/** A sheet as a file: its name ("beds.csv") and its text. */
export type SheetText = { readonly name: string; readonly text: string };

/**
 * All sheets of a farm, one file each, in the order of the sheets' fields; the rows stand in the order of the snapshot, so that the
 * same farm gives the same text, and each has its key, by which it is known again when it is brought back. RFC 4180: lines end in CRLF,
 * cells are quoted where they must be. A text that a spreadsheet would run gets an apostrophe before it, which the reader takes off
 * again: what is written reads back to the same records.
 *
 * Source: RFC 4180, section 2, https://www.rfc-editor.org/rfc/rfc4180
 */
export function farmSheets(snapshot: Snapshot): SheetText[] {
  const { rows } = knownFarm(snapshot);
  return sheetsOfRecords(farmRecordsOf(snapshot), rows);
}

/**
 * The sheets of records, with the keys of `kept` where it is given; lists that are absent give sheets with a header alone. Decimals are
 * written by the farm's mark, which its sheet names.
 */
export function sheetsOfRecords(records: FarmRecords, kept: KeptRows | null = null): SheetText[] {
  return sheetCells(records, kept).map(({ name, headings, rows }) => ({
    name: `${name}.csv`,
    text: csvText([headings, ...rows]),
  }));
}

/** A sheet's cells as its text says them, each row with its key where rows have one. */
export type SheetCells = {
  readonly name: SheetName;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** The cells of every sheet, by which a file of any kind is written. */
export function sheetCells(records: FarmRecords, kept: KeptRows | null): SheetCells[] {
  const rows = rowsOfRecords(records);
  return Object.keys(SHEETS).map((sheet) => cellsOfSheet(sheet as SheetName, rows, kept, records));
}

function cellsOfSheet<Name extends SheetName>(
  name: Name,
  rows: RowsBySheet,
  kept: KeptRows | null,
  { farm }: FarmRecords,
): SheetCells {
  const cells = (rows[name] as RowsBySheet[Name]).map((row) => cellsOf(SHEETS[name], row, farm?.decimalMark));
  const headings = headingsOf(name);
  if (!kept || !hasKeys(name)) return { name, headings, rows: cells };
  const keys = kept[name].map(({ key }) => key);
  return {
    name,
    headings: [...headings, KEY_HEADING],
    rows: cells.map((row, index) => [...row, keys[index] ?? ""]),
  };
}
