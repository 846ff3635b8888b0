import type { FarmRecords } from "#lib/domain/farm-records";
import { MOST_PROBLEMS } from "#lib/domain/problem";
import { SHEET_NAMES, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import type { Writing } from "#lib/domain/writing";
import { changedRecords } from "./changed-records";
import { markOfSheet, readFarmSettings } from "./farm-sheet";
import type { KnownFarm } from "./known-farm";
import { type LinkedSheets, linkSheets } from "./link-sheets";
import { type OpenedFile, openFiles, placeOfFile, type SheetFile } from "./open-files";
import { bookingRow, curveRow, recipeRows } from "./rows-of-records";
import { changesIn, type SheetChanges } from "./sheet-changes";
import type { SheetProblem } from "./sheet-problem";
import { joinRows, mapRecords, readRows, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

/**
 * What was read. `records` hold what the clean rows add and change, and nothing that the farm says already; `problems` name everything that
 * is wrong, at once, in the order of the files and their lines. Every row that is not clean has a problem of its own, unless a needed column
 * is missing: that is said once, at the header. `perSheet` says what would change.
 */
export type Reading = {
  readonly records: FarmRecords;
  readonly problems: readonly SheetProblem[];
  readonly rowCount: number;
  readonly cleanRowCount: number;
  readonly perSheet: readonly SheetChanges[];
};

/**
 * Reads the farm's sheets. Which sheet a file is, is found by its header, else by its name. Rows name things of the farm or of the
 * same upload, whatever the order of files and rows. A row stands for the row of the farm whose key it has, else for the one of its name, or of
 * its name and day; else it is new. Rows of the farm that the sheets lack stay as they are. Nothing is guessed: a name that is not found is
 * a problem with the nearest name.
 *
 * @param known  what the farm has already ({@link KnownFarm}); its settings are the defaults, and numbers and days are read as it writes them unless the upload brings others
 */
export function readFarmSheets(files: readonly SheetFile[], known: KnownFarm): Reading {
  const { opened, problems: unknownFiles } = openFiles(files);
  const rowsBy = <Name extends SheetName>(sheet: Name, writing: Writing): SheetRows<RowOf<Name>> =>
    joinRows((opened.get(sheet) ?? []).map(({ file, table }) => readRows(sheet, SHEETS[sheet], table, file, writing)));
  // The farm sheet's own cells are texts, which read alike however the farm writes.
  const settings = rowsBy("farm", {});
  const mark = markOfSheet(settings) ?? known.farm.decimalMark;
  const { rows: farmRows, farm } = readFarmSettings(settings, known.farm, mark);
  const writing = farm ?? { ...known.farm, decimalMark: mark };
  const linked = linkSheets((sheet) => rowsBy(sheet, writing), farm ? { ...known, farm } : known);
  const rows = rowsBySheet(farmRows, linked);
  const changesOf = <Name extends SheetName>(sheet: Name, files: readonly OpenedFile[]) => {
    const unreadCount = files.reduce((sum, { table }) => sum + table.problems.length, 0);
    return changesIn(sheet, rows[sheet], { known, unreadCount });
  };
  const perSheet = SHEET_NAMES.flatMap((sheet) => {
    const files = opened.get(sheet);
    return files ? [changesOf(sheet, files)] : [];
  });
  const isFarmChanged = perSheet.some(({ sheet, changedCount }) => sheet === "farm" && changedCount > 0);
  const problems = Object.values(rows).flatMap((sheet) => sheet.problems);
  return {
    records: { ...(farm && isFarmChanged ? { farm } : {}), ...changedRecords(linked, known) },
    problems: mostOf(inFileOrder([...unknownFiles, ...problems], files)),
    rowCount: perSheet.reduce((sum, { rowCount }) => sum + rowCount, 0),
    cleanRowCount: perSheet.reduce((sum, { cleanRowCount }) => sum + cleanRowCount, 0),
    perSheet,
  };
}

/** The rows of every sheet as its records would write them. */
function rowsBySheet(
  farm: SheetRows<RowOf<"farm">>,
  { sheets }: LinkedSheets,
): {
  readonly [Name in SheetName]: SheetRows<RowOf<Name>>;
} {
  return {
    ...sheets,
    farm,
    curves: mapRecords(sheets.curves, curveRow),
    recipes: mapRecords(sheets.recipes, (recipe) => recipeRows(recipe)[0]),
    bookings: mapRecords(sheets.bookings, bookingRow),
  };
}

/** The first problems, and one more that says how many are left out. */
function mostOf(problems: readonly SheetProblem[]): readonly SheetProblem[] {
  const [first] = problems;
  if (!first || problems.length <= MOST_PROBLEMS) return problems;
  const message = `and at least ${problems.length - MOST_PROBLEMS} more problems: mend those above first`;
  return [...problems.slice(0, MOST_PROBLEMS), { file: first.file, line: 1, column: null, message }];
}

function inFileOrder(problems: readonly SheetProblem[], files: readonly SheetFile[]): SheetProblem[] {
  const order = new Map(files.map((file, index) => [placeOfFile(file), index] as const));
  return [...problems].sort((a, b) => (order.get(a.file) ?? 0) - (order.get(b.file) ?? 0) || a.line - b.line);
}
