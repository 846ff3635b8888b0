import { unzipSync } from "fflate";
import type { SheetFile } from "./read-farm-sheets";
import type { SheetProblem } from "./sheet-problem";

/** The sheets of a zip, decoded, and what kept others out. */
export type Unzipped = { readonly files: readonly SheetFile[]; readonly problems: readonly SheetProblem[] };

/** The most bytes that the sheets of one zip may unpack to, together. */
export const MOST_UNPACKED_BYTES = 50 * 1024 * 1024;

/**
 * Takes the ".csv" files out of a zip, in the order of their names; anything else in it is passed over. Never throws: a zip that is
 * damaged, holds no sheet or unpacks to more than {@link MOST_UNPACKED_BYTES} gives a problem, and so does a sheet that is not UTF-8.
 * Nothing is unpacked before the sizes are known to fit, and no sheet beyond the size that the zip declares for it.
 *
 * @param zipName  the name of the zip, for its problems
 */
export function unzipSheets(bytes: Uint8Array, zipName = "the zip"): Unzipped {
  const refuse = (message: string): Unzipped => ({
    files: [],
    problems: [{ file: zipName, line: 1, column: null, message }],
  });
  const limitMb = MOST_UNPACKED_BYTES / 1024 / 1024;
  let declaredBytes = 0;
  let unpacked: Record<string, Uint8Array>;
  try {
    unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        if (isSheet(name)) declaredBytes += Math.max(size, originalSize);
        return false;
      },
    });
    if (declaredBytes > MOST_UNPACKED_BYTES)
      return refuse(`the sheets unpack to more than ${limitMb} MB: split the zip, or leave out the sheets not needed`);
    unpacked = unzipSync(bytes, { filter: ({ name }) => isSheet(name) });
  } catch {
    return refuse("this is not a zip that can be opened: zip the CSV sheets again, or bring them one by one");
  }
  const names = Object.keys(unpacked).sort();
  if (names.length === 0) return refuse('no sheet is in this zip: put files in it whose names end in ".csv"');
  const files: SheetFile[] = [];
  const problems: SheetProblem[] = [];
  for (const name of names) {
    const text = decoded(unpacked[name] ?? new Uint8Array());
    if (text === null)
      problems.push({
        file: name,
        line: 1,
        column: null,
        message: "not in UTF-8: save the sheet as CSV in UTF-8 and zip it again",
      });
    else files.push({ name, text });
  }
  return { files, problems };
}

/** A sheet by its name; the hidden twins that some systems add to a zip are not. */
const isSheet = (name: string): boolean => /(^|\/)[^/.][^/]*\.csv$/i.test(name) && !name.startsWith("__MACOSX/");

/** The text of UTF-8 bytes, or null when they are not. */
function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
