import type { FarmRecords } from "#lib/domain/farm-records";
import { MOST_PROBLEMS } from "#lib/domain/problem";
import { SHEET_NAMES, SHEETS, type SheetName } from "#lib/domain/records/sheets";
import type { Writing } from "#lib/domain/writing";
import { markOfSheet, readFarmSettings } from "./farm-sheet";
import type { KnownNames } from "./known-names";
import { linkBookings } from "./link-bookings";
import { gatherRecipes, linkCrops, linkCurves, linkRecipes, linkVarieties } from "./link-crops";
import { linkBeds, linkCooler, linkPlantings } from "./link-ground";
import { linkWeather } from "./link-weather";
import { cropBook, NameBook, recipeBook } from "./name-book";
import { sheetOfFile } from "./sheet-of-file";
import type { SheetProblem } from "./sheet-problem";
import { cleanRecords, joinRows, linkRows, readRows, type Say, type SheetRows } from "./sheet-rows";
import { MOST_LINES } from "./split-rows";
import { readTable, type Table } from "./table";
import { type RowOf, toBedRecord, toCropRecord, toCurveRecord, toRecipeLine, toStemLine } from "./to-records";
import { VarietyBook } from "./variety-book";

/** A file as it was uploaded, decoded. */
export type SheetFile = { readonly name: string; readonly text: string };

/** Rows in the files of one sheet, and how many of them are clean. */
type SheetCount = { readonly sheet: SheetName; readonly rowCount: number; readonly cleanRowCount: number };

/**
 * What was read. `records` hold the clean rows only; `problems` name everything that is wrong, at once, in the order of the files and
 * their lines. Every row that is not clean has a problem of its own, unless a needed column is missing: that is said once, at the header.
 */
export type Reading = {
  readonly records: FarmRecords;
  readonly problems: readonly SheetProblem[];
  readonly rowCount: number;
  readonly cleanRowCount: number;
  readonly perSheet: readonly SheetCount[];
};

type OpenedFile = { readonly file: string; readonly table: Table };

/**
 * Reads the farm's sheets. Which sheet a file is, is found by its header, else by its name. Rows name things of the farm or of the
 * same upload, whatever the order of files and rows. Nothing is guessed: a name that is not found is a problem with the nearest name.
 *
 * @param known  what the farm has already ({@link KnownNames}); its settings are the defaults, and numbers are read by its decimal mark unless the upload brings another
 */
export function readFarmSheets(files: readonly SheetFile[], known: KnownNames): Reading {
  const { opened, problems: unknownFiles } = openFiles(files);
  const rowsBy = <Name extends SheetName>(sheet: Name, writing: Writing): SheetRows<RowOf<Name>> =>
    joinRows((opened.get(sheet) ?? []).map(({ file, table }) => readRows(sheet, SHEETS[sheet], table, file, writing)));
  // The farm sheet's own cells are texts, which read alike however the farm writes.
  const settings = rowsBy("farm", {});
  const mark = markOfSheet(settings) ?? known.farm.decimalMark;
  const { rows: farmRows, farm } = readFarmSettings(settings, known.farm, mark);
  const writing = farm ?? { ...known.farm, decimalMark: mark };
  const rowsOf = <Name extends SheetName>(sheet: Name) => rowsBy(sheet, writing);
  const read = <Name extends SheetName, T>(sheet: Name, toRecord: (row: RowOf<Name>, say: Say) => T | null) =>
    linkRows(rowsOf(sheet), toRecord);

  const names = {
    crops: cropBook(known.crops),
    recipes: recipeBook(known.recipes),
    beds: new NameBook("bed", "the beds sheet", known.beds),
    varieties: new VarietyBook(known.varieties),
  };
  const crops = linkCrops(read("crops", toCropRecord), names.crops);
  const recipes = linkRecipes(read("recipes", toRecipeLine), names.recipes);
  const varieties = linkVarieties(rowsOf("varieties"), names.crops, names.varieties);
  const beds = linkBeds(read("beds", toBedRecord), names.beds);
  const plantings = linkPlantings(rowsOf("plantings"), names.beds, names.crops, names.varieties, known);
  const cooler = linkCooler(rowsOf("cooler"), names.crops, names.varieties, known);
  const weather = linkWeather(rowsOf("weather"));
  const curves = linkCurves(read("curves", toCurveRecord), names.crops, names.varieties);
  const { records: bookingRecords, ...booked } = linkBookings(
    {
      bookings: rowsOf("bookings"),
      pieces: rowsOf("pieces"),
      stems: read("stems", toStemLine),
    },
    { crops: names.crops, recipes: names.recipes, known: farm ? { ...known, farm } : known },
  );

  const sheets = { farm: farmRows, crops, curves, recipes, varieties, beds, plantings, cooler, weather, ...booked };
  const perSheet = SHEET_NAMES.filter((sheet) => opened.has(sheet)).map((sheet) =>
    countRows(sheet, sheets[sheet], opened.get(sheet) ?? []),
  );
  const records: FarmRecords = {
    ...(farm ? { farm } : {}),
    ...given("crops", cleanRecords(crops)),
    ...given("curves", cleanRecords(curves)),
    ...given("recipes", gatherRecipes(cleanRecords(recipes))),
    ...given("varieties", cleanRecords(varieties)),
    ...given("beds", cleanRecords(beds)),
    ...given("plantings", cleanRecords(plantings)),
    ...given("bookings", bookingRecords),
    ...given("coolerStock", cleanRecords(cooler)),
    ...given("weather", cleanRecords(weather)),
  };
  return {
    records,
    problems: mostOf(
      inFileOrder([...unknownFiles, ...Object.values(sheets).flatMap(({ problems }) => problems)], files),
    ),
    rowCount: perSheet.reduce((sum, { rowCount }) => sum + rowCount, 0),
    cleanRowCount: perSheet.reduce((sum, { cleanRowCount }) => sum + cleanRowCount, 0),
    perSheet,
  };
}

/** A list of records under its name, or nothing when it is empty. */
const given = <Key extends keyof FarmRecords>(key: Key, list: NonNullable<FarmRecords[Key]> & readonly unknown[]) =>
  list.length ? { [key]: list } : {};

function openFiles(files: readonly SheetFile[]) {
  const opened = new Map<SheetName, OpenedFile[]>();
  const problems: SheetProblem[] = [];
  let rowCount = 0;
  for (const { name: file, text } of files) {
    if (rowCount >= MOST_LINES) {
      const message = `not read, since the sheets before it have ${MOST_LINES} rows or more: bring it in by itself`;
      problems.push({ file, line: 1, column: null, message });
      continue;
    }
    const table = readTable(text);
    const sheet = sheetOfFile(file, table.header);
    rowCount += table.rows.length + table.problems.length;
    if (table.header.length === 0)
      for (const problem of table.problems) problems.push({ file, column: null, ...problem });
    else if (sheet === null)
      problems.push({
        file,
        line: table.headerLine,
        column: null,
        message: `no sheet has these columns: name the columns as in a sheet of this farm, or the file for its sheet (${SHEET_NAMES.map((name) => `${name}.csv`).join(", ")})`,
      });
    else {
      const others = opened.get(sheet);
      if (others) others.push({ file, table });
      else opened.set(sheet, [{ file, table }]);
    }
  }
  return { opened, problems };
}

const countRows = (sheet: SheetName, { rows }: SheetRows<unknown>, opened: readonly OpenedFile[]): SheetCount => ({
  sheet,
  rowCount: rows.length + opened.reduce((sum, { table }) => sum + table.problems.length, 0),
  cleanRowCount: rows.filter(({ record }) => record !== null).length,
});

/** The first problems, and one more that says how many are left out. */
function mostOf(problems: readonly SheetProblem[]): readonly SheetProblem[] {
  const [first] = problems;
  if (!first || problems.length <= MOST_PROBLEMS) return problems;
  const message = `and at least ${problems.length - MOST_PROBLEMS} more problems: mend those above first`;
  return [...problems.slice(0, MOST_PROBLEMS), { file: first.file, line: 1, column: null, message }];
}

function inFileOrder(problems: readonly SheetProblem[], files: readonly SheetFile[]): SheetProblem[] {
  const order = new Map(files.map(({ name }, index) => [name, index] as const));
  return [...problems].sort((a, b) => (order.get(a.file) ?? 0) - (order.get(b.file) ?? 0) || a.line - b.line);
}
