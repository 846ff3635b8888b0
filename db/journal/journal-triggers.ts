import type { Database } from "better-sqlite3";

/**
 * The journal sees every write, whoever makes it: triggers of the connection put each touched row, before and after, under the change that
 * is open. They are made anew at each opening from the tables as they are, so a new column or table cannot be forgotten.
 */
export function installJournal(sqlite: Database): void {
  sqlite.exec("CREATE TEMP TABLE open_change (change_id INTEGER NOT NULL)");
  for (const table of farmTables(sqlite)) {
    const columns = columnsOf(sqlite, table);
    const before = rowImage(columns, "old");
    const after = rowImage(columns, "new");
    const differs = columns.map((column) => `old.${column} IS NOT new.${column}`).join(" OR ");
    sqlite.exec(trigger(table, "INSERT", "", "new.id", "NULL", after));
    sqlite.exec(trigger(table, "UPDATE", `WHEN ${differs}`, "new.id", before, after));
    sqlite.exec(trigger(table, "DELETE", "", "old.id", before, "NULL"));
  }
}

/** Every table that holds the farm's records: all but the journal's own and the record of migrations. */
function farmTables(sqlite: Database): string[] {
  return sqlite
    .prepare<[], string>(
      `SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT IN ('change', 'change_row', 'save_key')
        AND name NOT GLOB 'sqlite_*' AND name NOT GLOB '__drizzle_*' ORDER BY name`,
    )
    .pluck()
    .all();
}

/** The columns of a table, in its order. */
export const columnsOf = (sqlite: Database, table: string): string[] =>
  sqlite.prepare<[string], string>("SELECT name FROM pragma_table_info(?)").pluck().all(table);

/** SQL for a row as JSON. `row` is "old", "new" or the table. SQLite writes a number with all the digits that JavaScript reads back. */
export const rowImage = (columns: readonly string[], row: string): string =>
  `json_object(${columns.map((column) => `'${column}', ${row}.${column}`).join(", ")})`;

function trigger(table: string, event: string, when: string, rowId: string, before: string, after: string): string {
  return `CREATE TEMP TRIGGER journal_${table}_${event.toLowerCase()} AFTER ${event} ON main.${table} ${when} BEGIN
    INSERT INTO change_row (change_id, table_name, row_id, before_json, after_json)
    SELECT change_id, '${table}', ${rowId}, ${before}, ${after} FROM open_change;
  END`;
}
