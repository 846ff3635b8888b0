import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import type { FarmDatabase } from "#db/client";
import { addRow, changeRow, type RowOf, removeRow } from "./put-row";

/**
 * Makes the lines of a booking or recipe these, in this order. `ids` are the lines it has now, in order. Lines keep their rows where they can,
 * so that saving without a change touches nothing in the journal.
 */
export function putLines<Table extends SQLiteTable>(
  database: FarmDatabase,
  table: Table,
  ids: readonly number[],
  lines: readonly RowOf<Table>[],
): void {
  for (const id of ids.slice(lines.length)) removeRow(database, table, id);
  lines.forEach((line, position) => {
    const id = ids[position];
    if (id === undefined) addRow(database, table, line);
    else changeRow(database, table, id, line);
  });
}
