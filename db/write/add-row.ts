import type { Database, Statement } from "better-sqlite3";
import { getTableColumns, getTableName } from "drizzle-orm";
import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import type { FarmDatabase } from "#db/client";

/**
 * Statements that add a row, kept for each connection: making one means compiling the journal's trigger too, which for an import of ten thousand
 * rows would be most of the time.
 */
const kept = new WeakMap<Database, Map<string, Statement>>();

/** Adds a row, every column but the id given, inside a change that is open; gives its id. Throws SqliteError on a constraint. */
export function addRow<Table extends SQLiteTable>(
  database: FarmDatabase,
  table: Table,
  row: Omit<Required<Table["$inferInsert"]>, "id">,
): number {
  const statements = kept.get(database.$client) ?? new Map<string, Statement>();
  kept.set(database.$client, statements);
  const name = getTableName(table);
  const statement = statements.get(name) ?? database.$client.prepare(insertInto(table));
  statements.set(name, statement);
  return Number(statement.run(row).lastInsertRowid);
}

function insertInto(table: SQLiteTable): string {
  const columns = Object.entries(getTableColumns(table)).filter(([key]) => key !== "id");
  const names = columns.map(([, column]) => column.name).join(", ");
  return `INSERT INTO ${getTableName(table)} (${names}) VALUES (${columns.map(([key]) => `@${key}`).join(", ")})`;
}
