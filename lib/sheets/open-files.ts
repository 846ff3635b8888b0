import { SHEET_NAMES, type SheetName } from "#lib/domain/records/sheets";
import { sheetOfFile } from "./sheet-of-file";
import type { SheetProblem } from "./sheet-problem";
import { MOST_LINES } from "./split-rows";
import { readTable, type Table } from "./table";

/** A file as it was uploaded, decoded. */
export type SheetFile = { readonly name: string; readonly text: string };

/** A file whose sheet is known. */
export type OpenedFile = { readonly file: string; readonly table: Table };

/** Takes each file for the sheet that it is, and says which are none. After {@link MOST_LINES} rows no further file is read. */
export function openFiles(files: readonly SheetFile[]) {
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
