import { unzipSync } from "fflate";
import { crc32, declaredEntries } from "./zip-checksums";

/** An entry of a zip; not whole when its checksum is wrong. */
type Entry = { readonly name: string; readonly content: Uint8Array; readonly isWhole: boolean };

/** What came out of a zip, and how many bytes it declares for that; or why nothing does. */
export type Unpacked = { readonly entries: readonly Entry[]; readonly bytes: number } | "damaged" | "too large";

/** The most bytes that the sheets of one upload may unpack to, together: twelve times those of a farm of 4,000 beds and 4,000 bookings. */
export const MOST_UNPACKED_BYTES = 24 * 1024 * 1024;

/** The most files of a zip: a farm has twelve sheets. */
export const MOST_ZIPPED_FILES = 1000;

/**
 * The wanted entries of a zip, in the order of their names. Never throws. Nothing is unpacked before the declared sizes are known to fit into
 * `mostBytes`, and nothing beyond its declared size.
 */
export function unpack(
  bytes: Uint8Array,
  isWanted: (name: string) => boolean,
  mostBytes: number = MOST_UNPACKED_BYTES,
): Unpacked {
  let declaredBytes = 0;
  let index = 0;
  const declared = declaredEntries(bytes);
  const crcOf = new Map<string, number | undefined>();
  try {
    // The unzipper walks the directory in its order, and so do we: the checksums are matched by place.
    unzipSync(bytes, {
      filter: ({ name, size, originalSize }) => {
        if (isWanted(name)) {
          declaredBytes += Math.max(size, originalSize);
          crcOf.set(name, declared[index]?.crc);
        }
        index += 1;
        return false;
      },
    });
    if (index !== declared.length) return "damaged";
    if (index > MOST_ZIPPED_FILES || declaredBytes > mostBytes) return "too large";
    const unpacked = unzipSync(bytes, { filter: ({ name }) => isWanted(name) });
    const entries = Object.keys(unpacked)
      .sort()
      .map((name) => {
        const content = unpacked[name] ?? new Uint8Array();
        return { name, content, isWhole: crc32(content) === crcOf.get(name) };
      });
    return { entries, bytes: declaredBytes };
  } catch {
    return "damaged";
  }
}

/** The text of UTF-8 bytes, or null when they are not. */
export function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}
