import { type Database, SqliteError } from "better-sqlite3";

/** Room of a megabyte, and a quarter of the file: less is soon filled again. Our own measure. */
const LEAST_FREE_PAGES = 256;
const LEAST_FREE_SHARE = 0.25;

/**
 * Makes the file as small as what it holds, when much of it is free: after an import that was undone and has left the history. Writes the file anew
 * in one transaction (https://www.sqlite.org/lang_vacuum.html), 30 ms for a megabyte on this machine's disk. Does nothing when there is no room for
 * that, or somebody else is writing.
 */
export function giveBackRoom(sqlite: Database): void {
  const count = (name: string) => Number(sqlite.pragma(name, { simple: true }));
  const freePages = count("freelist_count");
  if (freePages < LEAST_FREE_PAGES || freePages < count("page_count") * LEAST_FREE_SHARE) return;
  try {
    sqlite.exec("VACUUM");
  } catch (error) {
    if (!(error instanceof SqliteError && ["SQLITE_FULL", "SQLITE_BUSY"].includes(error.code))) throw error;
  }
}
