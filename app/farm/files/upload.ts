import { strToU8, unzipSync, zipSync } from "fflate";

/** A file as it was chosen or pasted: its name and its bytes. */
export type ChosenFile = { readonly name: string; readonly bytes: Uint8Array };

/** Sheets and the files that hold them; all else in a zip is left alone, as are the shadows that some systems put beside each file. */
const isSheet = (name: string): boolean => /\.(csv|tsv|txt)$/i.test(name) && !/(^|\/)(\.|__MACOSX\/)/.test(name);

/** More than any farm's sheet holds; a larger one in a zip is not unpacked. */
const MOST_BYTES_OF_A_SHEET = 50_000_000;

/** The files of a zip, or null when it cannot be read. */
export function unzipped(zip: Uint8Array): ChosenFile[] | null {
  try {
    const entries = unzipSync(zip, {
      filter: ({ name, originalSize }) => isSheet(name) && originalSize <= MOST_BYTES_OF_A_SHEET,
    });
    return Object.entries(entries).map(([path, bytes]) => ({ name: path.split("/").at(-1) ?? path, bytes }));
  } catch {
    return null;
  }
}

/** The files as one small zip, for the way to the server. Each lies in a folder of its own, so that two of one name do not meet. */
export const packed = (files: readonly ChosenFile[]): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries(files.map(({ name, bytes }, index) => [`${index}/${sheetName(name)}`, bytes])));

/** A sheet's file needs an ending that says so. */
const sheetName = (name: string): string => (isSheet(name) ? name : `${name}.txt`);

/** Rows pasted from a spreadsheet, as a file. */
export const pasted = (text: string): ChosenFile => ({ name: "pasted rows.txt", bytes: strToU8(text) });
