import { strToU8, zipSync } from "fflate";
import type { SheetText } from "./farm-sheets";

/** The earliest time a zip can name: the same sheets give the same bytes, whenever they are zipped. Read in the machine's own zone. */
export const FIRST_ZIP_TIME = "1980-01-01T00:00:00";

/**
 * The sheets in one zip, bytes for a download. Each starts with a byte order mark, so that spreadsheets read its letters as UTF-8;
 * the reader drops it.
 */
export const zipSheets = (sheets: readonly SheetText[]): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries(sheets.map(({ name, text }) => [name, strToU8(`\uFEFF${text}`)])), {
    level: 6,
    mtime: FIRST_ZIP_TIME,
  });
