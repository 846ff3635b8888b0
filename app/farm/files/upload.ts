import { strToU8, zipSync } from "fflate";
import { openZip } from "#lib/sheets/open-zip";

/** A file as it was chosen or pasted: its name and its bytes. */
export type ChosenFile = { readonly name: string; readonly bytes: Uint8Array };

/** A file as it was chosen, or the sheets inside when it is a zip, and what is wrong with those that could not be taken out. */
export function opened(file: ChosenFile): {
  readonly files: readonly ChosenFile[];
  readonly complaints: readonly string[];
} {
  if (OTHER_WORKBOOK.test(file.name))
    return { files: [], complaints: [`${file.name}: save it as XLSX or CSV first, and choose that.`] };
  if (!/\.zip$/i.test(file.name)) return { files: [file], complaints: [] };
  const { files, problems } = openZip(file.bytes, file.name);
  return {
    files: files.map(({ name, bytes }) => ({ name: name.split("/").at(-1) ?? name, bytes })),
    complaints: problems.map((problem) => `${problem.file}: ${problem.message}.`),
  };
}

/** Workbooks in formats that are not read here. */
const OTHER_WORKBOOK = /\.(xls|xlsm|xlsb|ods|numbers)$/i;

/** The files as one small zip, for the way to the server. Each lies in a folder of its own, so that two of one name do not meet. */
export const packed = (files: readonly ChosenFile[]): Uint8Array<ArrayBuffer> =>
  zipSync(
    Object.fromEntries(
      files.map(({ name, bytes }, index) => [`${String(index).padStart(4, "0")}/${sheetName(name)}`, bytes]),
    ),
  );

/** A sheet's file needs an ending that says so. */
const sheetName = (name: string): string => (/\.(csv|tsv|txt|xlsx)$/i.test(name) ? name : `${name}.txt`);

/** Rows pasted from a spreadsheet, as a file. */
export const pasted = (text: string): ChosenFile => ({ name: "pasted rows.txt", bytes: strToU8(text) });
