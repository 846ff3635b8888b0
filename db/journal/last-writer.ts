import type { FarmDatabase } from "#db/client";

/**
 * Who made the change that wrote a row last: their name, or null for the owner at the machine. Undefined where that change is kept no longer.
 * Looks through the rows that are kept, so it is asked for a few rows at a time.
 */
export function lastWriter(database: FarmDatabase, table: string, rowId: number): string | null | undefined {
  return database.$client
    .prepare<[string, number], string | null>(
      `SELECT made_by FROM change_row JOIN change ON change.id = change_id
       WHERE table_name = ? AND row_id = ? ORDER BY change_row.id DESC LIMIT 1`,
    )
    .pluck()
    .get(table, rowId);
}
