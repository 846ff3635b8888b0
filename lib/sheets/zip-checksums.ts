/**
 * CRC-32 of bytes, as zip files carry it. Source: PKWARE, APPNOTE.TXT (.ZIP File Format Specification); polynomial and section numbers
 * here are from memory, and the tests hold the sums against zlib's.
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffff_ffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ (CRC_TABLE[(crc ^ byte) & 0xff] ?? 0);
  return (crc ^ 0xffff_ffff) >>> 0;
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb8_8320 : crc >>> 1;
  return crc;
});

/** The checksum that a zip's directory declares for an entry. */
export type Declared = { readonly crc: number };

const END_OF_DIRECTORY = 0x0605_4b50;
const DIRECTORY_ENTRY = 0x0201_4b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;

/**
 * What the directory of a zip declares for each entry, in its order; shorter than the directory when that is cut off or is of the
 * kind for zips beyond 4 GB. Source: PKWARE APPNOTE.TXT 4.3.12 (directory) and 4.3.16 (its end).
 */
export function declaredEntries(bytes: Uint8Array): Declared[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - END_BYTES;
  while (end >= 0 && view.getUint32(end, true) !== END_OF_DIRECTORY) end -= 1;
  const entries: Declared[] = [];
  if (end < 0) return entries;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  while (entries.length < count && at + ENTRY_BYTES <= bytes.length && view.getUint32(at, true) === DIRECTORY_ENTRY) {
    entries.push({ crc: view.getUint32(at + 16, true) });
    at += ENTRY_BYTES + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}
