import { headingsOf, SHEET_NAMES, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import { neededHeadings } from "./columns";
import { columnKey, headingsMeant } from "./headings";

/**
 * Which sheet a file is: the one whose needed columns all stand in the header and that knows most of its columns; of equals, the one
 * that the file is named for, then the first. When no header fits, the file's name decides ("beds.csv", "Beds 2027.csv"), and then a
 * sheet that knows more than half of the columns. Null when nothing fits.
 */
export function sheetOfFile(fileName: string, header: readonly string[]): SheetName | null {
  const keys = new Set(header.map(columnKey).filter((key) => key !== ""));
  const named = sheetNamed(fileName);
  const meant = new Map(
    SHEET_NAMES.map((sheet) => [sheet, new Set(headingsMeant(SHEETS[sheet], header).map(({ heading }) => heading))]),
  );
  const has = (sheet: SheetName, column: string) => meant.get(sheet)?.has(column) === true;
  const ownCount = (sheet: SheetName) => headingsOf(sheet).filter((column) => keys.has(column)).length;
  // A word of others counts half: a sheet that is called by its own names goes first.
  const knownCount = (sheet: SheetName) =>
    headingsOf(sheet).filter((column) => has(sheet, column)).length + ownCount(sheet);
  const best = (sheets: readonly SheetName[]) =>
    [...sheets].sort((a, b) => knownCount(b) - knownCount(a) || Number(b === named) - Number(a === named))[0] ?? null;
  const fitting = SHEET_NAMES.filter((sheet) => neededHeadings(SHEETS[sheet]).every((column) => has(sheet, column)));
  const nearest = best(SHEET_NAMES.filter((sheet) => knownCount(sheet) > keys.size));
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
