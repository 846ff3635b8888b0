import { type DecimalMark, readNumber, writeNumber } from "#lib/domain/read-number";
import { columnsOf, SHEETS } from "#lib/domain/records/sheets";
import type { Snapshot } from "#lib/domain/snapshot";
import { asText } from "./csv-text";
import { farmRecordsOf } from "./farm-records-of";
import { type SheetCells, sheetCells } from "./farm-sheets";
import { knownFarm } from "./known-farm";
import { serialOf } from "./xlsx/serial-day";
import { type WrittenCell, workbookOf } from "./xlsx/write-workbook";

/**
 * All sheets of a farm in one workbook (XLSX), with the columns, rows and keys of the sheets as CSV; numbers and days are those of the spreadsheet,
 * so that it adds them up and sorts by them. What is written reads back to the same records.
 */
export function farmWorkbook(snapshot: Snapshot): Uint8Array<ArrayBuffer> {
  const { decimalMark } = snapshot.farm;
  const sheets = sheetCells(farmRecordsOf(snapshot), knownFarm(snapshot).rows);
  return workbookOf(sheets.map((sheet) => ({ ...sheet, rows: typedRows(sheet, decimalMark) })));
}

/** The cells of a sheet by the kind of their column; a key is a text. */
function typedRows({ name, rows }: SheetCells, mark: DecimalMark): WrittenCell[][] {
  const inputs = columnsOf(SHEETS[name]).map(({ field }) => field.kind.input);
  return rows.map((row) => row.map((cell, column) => typedCell(cell, inputs[column], mark)));
}

function typedCell(cell: string, input: string | undefined, mark: DecimalMark): WrittenCell {
  if (cell === "") return cell;
  if (input === "day") {
    const serial = serialOf(cell);
    if (serial !== null) return { serial };
  }
  if (input === "number") {
    const read = readNumber(cell, mark);
    if (read.ok && writeNumber(read.value, mark) === cell) return read.value;
  }
  return asText(cell);
}
