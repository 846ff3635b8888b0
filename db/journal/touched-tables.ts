import type { FarmDatabase } from "#db/client";
import { revision } from "./journal";

/**
 * The tables of which the changes after one wrote rows, up to the newest: the journal sees every write of this connection. Null when that cannot be said,
 * because not all of these changes are kept any more.
 *
 * @param since  the number of the last change that is known already
 */
export function touchedTables(database: FarmDatabase, since: number): ReadonlySet<string> | null {
  const sqlite = database.$client;
  const keptCount = sqlite.prepare<[number], number>("SELECT count(*) FROM change WHERE id > ?").pluck().get(since);
  if (keptCount !== revision(database) - since) return null;
  const touched = "SELECT DISTINCT table_name FROM change_row WHERE change_id > ?";
  return new Set(sqlite.prepare<[number], string>(touched).pluck().all(since));
}
