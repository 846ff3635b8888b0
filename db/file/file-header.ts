import { closeSync, openSync, readSync } from "node:fs";

/** What the first hundred bytes of a database file say. Source: https://www.sqlite.org/fileformat2.html#the_database_header */
export type FileHeader = {
  /** Grows with every transaction that writes, in a file with a rollback journal. */
  readonly changeCounter: number;
  readonly pageCount: number;
  readonly pageBytes: number;
  readonly schemaCookie: number;
  readonly applicationId: number;
  /** In WAL mode, part of the farm may lie in the file beside it. */
  readonly isWal: boolean;
};

/** Marks a database file as a farm of this tool ("SSfm"), in its header. Source: https://www.sqlite.org/pragma.html#pragma_application_id */
export const FARM_APPLICATION_ID = 0x5353666d;

const HEADER_BYTES = 100;
const MAGIC = "SQLite format 3\0";

/**
 * The header of a database file; null when the file does not begin as one. Closing a file drops every lock that this process holds on it
 * (https://www.sqlite.org/howtocorrupt.html, 2.2), so this is never called inside a transaction.
 */
export function readHeader(file: string): FileHeader | null {
  return parseHeader(firstBytes(file, HEADER_BYTES));
}

export function parseHeader(bytes: Buffer): FileHeader | null {
  if (bytes.length < HEADER_BYTES || bytes.toString("latin1", 0, 16) !== MAGIC) return null;
  return {
    changeCounter: bytes.readUInt32BE(24),
    pageCount: bytes.readUInt32BE(28),
    pageBytes: bytes.readUInt16BE(16) === 1 ? 65_536 : bytes.readUInt16BE(16),
    schemaCookie: bytes.readUInt32BE(40),
    applicationId: bytes.readUInt32BE(68),
    isWal: bytes[18] === 2 || bytes[19] === 2,
  };
}

/** As many bytes from the beginning of a file as there are, `count` at most. */
export function firstBytes(file: string, count: number): Buffer {
  const handle = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(count);
    return bytes.subarray(0, readSync(handle, bytes, 0, count, 0));
  } finally {
    closeSync(handle);
  }
}
