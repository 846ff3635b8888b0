import { SHEET_NAMES, type SheetName } from "#lib/domain/records/sheets";
import { sheetOfFile } from "./sheet-of-file";
import type { SheetProblem } from "./sheet-problem";
import { MOST_LINES } from "./split-rows";
import { readTable, type Table, tableOfWorksheet } from "./table";
import { isStationWeather } from "./weather-sheet";
import type { Worksheet } from "./xlsx/read-workbook";

/** A file as it was uploaded, decoded, or a sheet of a workbook under the workbook's name. */
export type SheetFile = { readonly name: string } & ({ readonly text: string } | { readonly worksheet: Worksheet });

/** What people find a sheet by: "beds.csv", "season.xlsx, sheet Beds". */
export const placeOfFile = (file: SheetFile): string =>
  "text" in file ? file.name : `${file.name}, sheet ${file.worksheet.name}`;

/** A file whose sheet is known. */
export type OpenedFile = { readonly file: string; readonly table: Table };

const ASKS_ITS_UNIT =
  "this is daily weather, whose unit must be asked: bring it in under Farm, Weather, or name its columns date, high_c and low_c if it is in °C";

/** Takes each file for the sheet that it is, and says which are none. After {@link MOST_LINES} rows no further file is read. */
export function openFiles(files: readonly SheetFile[]) {
  const opened = new Map<SheetName, OpenedFile[]>();
  const problems: SheetProblem[] = [];
  let rowCount = 0;
  for (const one of files) {
    const file = placeOfFile(one);
    if (rowCount >= MOST_LINES) {
      const message = `not read, since the sheets before it have ${MOST_LINES} rows or more: bring it in by itself`;
      problems.push({ file, line: 1, column: null, message });
      continue;
    }
    const table = "text" in one ? readTable(one.text) : tableOfWorksheet(one.worksheet);
    const sheet = sheetOfFile("text" in one ? one.name : one.worksheet.name, table.header);
    rowCount += table.rows.length + table.problems.length;
    if (table.header.length === 0)
      for (const problem of table.problems) problems.push({ file, column: null, ...problem });
    else if ((sheet === null || sheet === "weather") && isStationWeather(table.header))
      problems.push({ file, line: table.headerLine, column: null, message: ASKS_ITS_UNIT });
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
