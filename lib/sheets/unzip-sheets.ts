import type { SheetFile } from "./open-files";
import { isWorkbook, openZip } from "./open-zip";
import type { SheetProblem } from "./sheet-problem";
import { decoded, MOST_UNPACKED_BYTES } from "./unpack";
import { openWorkbook } from "./xlsx/open-workbook";

/** The sheets of a zip, decoded, and what kept others out. */
export type Unzipped = { readonly files: readonly SheetFile[]; readonly problems: readonly SheetProblem[] };

/**
 * Reads the files of separated values (".csv", ".tsv", ".txt") and the workbooks (".xlsx") of a zip, in the order of their names; anything else
 * is passed over. Never throws: a zip or workbook that is damaged, holds no sheet or unpacks to more than {@link MOST_UNPACKED_BYTES} gives a
 * problem, and so does a sheet that is not UTF-8 or whose checksum is wrong. All workbooks of a zip share that room.
 *
 * @param zipName  the name of the zip, for its problems
 */
export function unzipSheets(bytes: Uint8Array, zipName = "the zip"): Unzipped {
  const opened = openZip(bytes, zipName);
  const files: SheetFile[] = [];
  const problems: SheetProblem[] = [...opened.problems];
  let bytesLeft = MOST_UNPACKED_BYTES;
  for (const { name, bytes: content } of opened.files) {
    const problem = (message: string) => problems.push({ file: name, line: 1, column: null, message });
    if (isWorkbook(name)) {
      const workbook = openWorkbook(content, bytesLeft);
      bytesLeft -= workbook.unpackedBytes;
      if (workbook.message !== null) problem(workbook.message);
      for (const worksheet of workbook.worksheets) files.push({ name, worksheet });
      continue;
    }
    const text = decoded(content);
    if (text === null) problem("not in UTF-8: save the sheet as CSV in UTF-8 and bring it again");
    else files.push({ name, text });
  }
  return { files, problems };
}
