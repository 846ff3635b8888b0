import { headingsOf, SHEET_NAMES, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import { neededHeadings } from "./columns";
import { columnKey } from "./sheet-rows";

/**
 * Which sheet a file is: the one whose needed columns all stand in the header and that knows most of its columns; of equals, the one
 * that the file is named for, then the first. When no header fits, the file's name decides ("beds.csv", "Beds 2027.csv"), and then a
 * sheet that knows more than half of the columns. Null when nothing fits.
 */
export function sheetOfFile(fileName: string, header: readonly string[]): SheetName | null {
  const keys = new Set(header.map(columnKey).filter((key) => key !== ""));
  const named = sheetNamed(fileName);
  const knownCount = (sheet: SheetName) => headingsOf(sheet).filter((column) => keys.has(column)).length;
  const best = (sheets: readonly SheetName[]) =>
    [...sheets].sort((a, b) => knownCount(b) - knownCount(a) || Number(b === named) - Number(a === named))[0] ?? null;
  const fitting = SHEET_NAMES.filter((sheet) => neededHeadings(SHEETS[sheet]).every((column) => keys.has(column)));
  const nearest = best(SHEET_NAMES.filter((sheet) => knownCount(sheet) * 2 > keys.size));
  return best(fitting) ?? named ?? nearest;
}

function sheetNamed(fileName: string): SheetName | null {
  const base = fileName.split(/[\\/]/).at(-1) ?? fileName;
  const words = base
    .toLowerCase()
    .replace(/\.[a-z]+$/, "")
    .split(/[^a-z]+/);
  return SHEET_NAMES.find((sheet) => words.includes(sheet)) ?? null;
}
