import type { Database, Statement } from "better-sqlite3";
import { getTableColumns, getTableName } from "drizzle-orm";
import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import type { FarmDatabase } from "#db/client";

/**
 * Statements that write a row, kept for each connection: making one means compiling the journal's trigger too, which for an import of ten
 * thousand rows would be most of the time.
 */
const kept = new WeakMap<Database, Map<string, Statement>>();

/** A row of a table but its id. What it holds beside the columns is left aside. */
export type RowOf<Table extends SQLiteTable> = Omit<Required<Table["$inferInsert"]>, "id">;

/** Adds a row, every column but the id given, inside a change that is open; gives its id. Throws SqliteError on a constraint. */
export function addRow<Table extends SQLiteTable>(database: FarmDatabase, table: Table, row: RowOf<Table>): number {
  return Number(keptStatement(database, insertInto(table)).run(cellsOf(table, row)).lastInsertRowid);
}

/** Makes the row with this id what `row` says, every column given. Throws SqliteError on a constraint. */
export function changeRow<Table extends SQLiteTable>(
  database: FarmDatabase,
  table: Table,
  id: number,
  row: RowOf<Table>,
): void {
  keptStatement(database, update(table)).run({ ...cellsOf(table, row), id });
}

/** Removes the row with this id. Throws SqliteError while another row needs it. */
export function removeRow(database: FarmDatabase, table: SQLiteTable, id: number): void {
  keptStatement(database, `DELETE FROM ${getTableName(table)} WHERE id = @id`).run({ id });
}

function keptStatement({ $client }: FarmDatabase, sql: string): Statement {
  const statements = kept.get($client) ?? new Map<string, Statement>();
  kept.set($client, statements);
  const statement = statements.get(sql) ?? $client.prepare(sql);
  statements.set(sql, statement);
  return statement;
}

const columnsOf = (table: SQLiteTable) => Object.entries(getTableColumns(table)).filter(([key]) => key !== "id");

/** The columns of a row, each as SQLite keeps it. */
function cellsOf(table: SQLiteTable, row: object): Record<string, unknown> {
  const values = row as Record<string, unknown>;
  return Object.fromEntries(
    columnsOf(table).map(([key, column]) => [key, values[key] === null ? null : column.mapToDriverValue(values[key])]),
  );
}

function insertInto(table: SQLiteTable): string {
  const columns = columnsOf(table);
  const names = columns.map(([, column]) => column.name).join(", ");
  return `INSERT INTO ${getTableName(table)} (${names}) VALUES (${columns.map(([key]) => `@${key}`).join(", ")})`;
}

const update = (table: SQLiteTable): string =>
  `UPDATE ${getTableName(table)} SET ${columnsOf(table)
    .map(([key, column]) => `${column.name} = @${key}`)
    .join(", ")} WHERE id = @id`;
