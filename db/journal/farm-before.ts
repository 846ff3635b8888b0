import Database from "better-sqlite3";
import { drizzle } from "drizzle-orm/better-sqlite3";
import type { FarmDatabase } from "#db/client";
import { loadSnapshot } from "#db/read/read";
import type { Snapshot } from "#lib/domain/snapshot";
import { KEPT } from "./journal";
import { putRowsBack, UndoRefused } from "./put-rows-back";

/** No change has this number: what is put back in a copy is no change of its own. */
const NO_CHANGE = 0;

/**
 * The farm as it stood at a moment: a copy of it in memory, in which every change made since is taken back, the newest first. The farm itself is only
 * read. Null where not all changes since are kept.
 * @param moment  UTC, "YYYY-MM-DD hh:mm:ss"
 */
export function farmBefore(database: FarmDatabase, moment: string): Snapshot | null {
  const { $client } = database;
  const ids = changesSince(database, moment);
  const rows = $client.prepare<[], number>("SELECT count(*) FROM change_row").pluck().get() ?? 0;
  if (ids.length >= KEPT.changes || rows >= KEPT.rows / 2) return null;
  const copy = new Database($client.serialize());
  try {
    copy.transaction(() => {
      for (const id of ids) putRowsBack(copy, id, NO_CHANGE);
    })();
    const read = loadSnapshot(drizzle(copy));
    return read.ok ? read.parsed : null;
  } catch (error) {
    if (error instanceof UndoRefused) return null;
    throw error;
  } finally {
    copy.close();
  }
}

/** Whether the farm was written to at or after a moment. @param moment  UTC, "YYYY-MM-DD hh:mm:ss" */
export const hasChangedSince = (database: FarmDatabase, moment: string): boolean =>
  changesSince(database, moment).length > 0;

/** The changes made at or after a moment, the newest first. */
const changesSince = ({ $client }: FarmDatabase, moment: string): number[] =>
  $client.prepare<[string], number>("SELECT id FROM change WHERE made_at >= ? ORDER BY id DESC").pluck().all(moment);
