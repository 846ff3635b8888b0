import type { SheetProblem } from "./sheet-problem";
import { MOST_UNPACKED_BYTES, MOST_ZIPPED_FILES, unpack } from "./unpack";

/** The sheets of a zip as they lie in it, and what kept others out. */
export type OpenedZip = {
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
  readonly problems: readonly SheetProblem[];
};

/** Takes the sheets out of a zip, in the order of their names; anything else is passed over. What is damaged is a problem, never an exception. */
export function openZip(bytes: Uint8Array, zipName: string): OpenedZip {
  const problem = (file: string, message: string): SheetProblem => ({ file, line: 1, column: null, message });
  const refuse = (message: string): OpenedZip => ({ files: [], problems: [problem(zipName, message)] });
  const unpacked = unpack(bytes, isSheet);
  if (unpacked === "damaged")
    return refuse("this is not a zip that can be opened: zip the sheets again, or bring them one by one");
  if (unpacked === "too large")
    return refuse(
      `the sheets unpack to more than ${MOST_UNPACKED_BYTES / 1024 / 1024} MB, or are more than ${MOST_ZIPPED_FILES}: split the zip, or leave out what is not needed`,
    );
  if (unpacked.entries.length === 0)
    return refuse('no sheet is in this zip: put files in it whose names end in ".csv" or ".xlsx"');
  return {
    files: unpacked.entries.flatMap(({ name, content, isWhole }) => (isWhole ? [{ name, bytes: content }] : [])),
    problems: unpacked.entries.flatMap(({ name, isWhole }) =>
      isWhole ? [] : [problem(name, "damaged in the zip: zip the sheet again, or bring it by itself")],
    ),
  };
}

/** A workbook by its name. */
export const isWorkbook = (name: string): boolean => /\.xlsx$/i.test(name);

/** A sheet or workbook by its name; the hidden twins that some systems add to a zip are not. */
const isSheet = (name: string): boolean =>
  /(^|\/)[^/.][^/]*\.(csv|tsv|txt|xlsx)$/i.test(name) && !name.startsWith("__MACOSX/");
