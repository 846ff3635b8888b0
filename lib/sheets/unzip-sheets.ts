import { unzipSync } from "fflate";
import type { SheetFile } from "./open-files";
import type { SheetProblem } from "./sheet-problem";
import { crc32, declaredEntries } from "./zip-checksums";

/** The sheets of a zip, decoded, and what kept others out. */
export type Unzipped = { readonly files: readonly SheetFile[]; readonly problems: readonly SheetProblem[] };

/** The most bytes that the sheets of one zip may unpack to, together: twelve times those of a farm of 4,000 beds and 4,000 bookings. */
export const MOST_UNPACKED_BYTES = 24 * 1024 * 1024;

/** The most files of a zip: a farm has eleven sheets. */
const MOST_ZIPPED_FILES = 1000;

/**
 * Takes the files of separated values (".csv", ".tsv", ".txt") out of a zip, in the order of their names; anything else is passed over. Never throws: a zip that is
 * damaged, holds no sheet or unpacks to more than {@link MOST_UNPACKED_BYTES} gives a problem, and so does a sheet that is not UTF-8
 * or whose checksum is wrong. Nothing is unpacked before the declared sizes are known to fit, and nothing beyond its declared size.
 *
 * @param zipName  the name of the zip, for its problems
 */
export function unzipSheets(bytes: Uint8Array, zipName = "the zip"): Unzipped {
  const problem = (file: string, message: string): SheetProblem => ({ file, line: 1, column: null, message });
  const refuse = (message: string): Unzipped => ({ files: [], problems: [problem(zipName, message)] });
  const unpacked = unpackedSheets(bytes);
  if (unpacked === "damaged")
    return refuse("this is not a zip that can be opened: zip the CSV sheets again, or bring them one by one");
  if (unpacked === "too large") {
    const limitMb = MOST_UNPACKED_BYTES / 1024 / 1024;
    return refuse(
      `the sheets unpack to more than ${limitMb} MB, or are more than ${MOST_ZIPPED_FILES}: split the zip, or leave out what is not needed`,
    );
  }
  if (unpacked.length === 0) return refuse('no sheet is in this zip: put files in it whose names end in ".csv"');
  const files: SheetFile[] = [];
  const problems: SheetProblem[] = [];
  for (const { name, content, isWhole } of unpacked) {
    const text = decoded(content);
    if (!isWhole) problems.push(problem(name, "damaged in the zip: zip the sheet again, or bring it by itself"));
    else if (text === null)
      problems.push(problem(name, "not in UTF-8: save the sheet as CSV in UTF-8 and bring it again"));
    else files.push({ name, text });
  }
  return { files, problems };
}

type UnpackedSheet = { readonly name: string; readonly content: Uint8Array; readonly isWhole: boolean };

function unpackedSheets(bytes: Uint8Array): UnpackedSheet[] | "damaged" | "too large" {
  let declaredBytes = 0;
  let index = 0;
  const declared = declaredEntries(bytes);
  const crcOf = new Map<string, number | undefined>();
  try {
    // The unzipper walks the directory in its order, and so do we: the checksums are matched by place.
    unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        if (isSheet(name)) {
          declaredBytes += Math.max(size, originalSize);
          crcOf.set(name, declared[index]?.crc);
        }
        index += 1;
        return false;
      },
    });
    if (index !== declared.length) return "damaged";
    if (index > MOST_ZIPPED_FILES) return "too large";
    if (declaredBytes > MOST_UNPACKED_BYTES) return "too large";
    const unpacked = unzipSync(bytes, { filter: ({ name }) => isSheet(name) });
    return Object.keys(unpacked)
      .sort()
      .map((name) => {
        const content = unpacked[name] ?? new Uint8Array();
        return { name, content, isWhole: crc32(content) === crcOf.get(name) };
      });
  } catch {
    return "damaged";
  }
}

/** A sheet by its name; the hidden twins that some systems add to a zip are not. */
const isSheet = (name: string): boolean =>
  /(^|\/)[^/.][^/]*\.(csv|tsv|txt)$/i.test(name) && !name.startsWith("__MACOSX/");

/** The text of UTF-8 bytes, or null when they are not. */
function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
