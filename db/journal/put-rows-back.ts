import type { Database, Statement } from "better-sqlite3";
import { overfullBookings } from "#db/read/overfull-bookings";
import { columnsOf, rowImage } from "./journal-triggers";

/** An undo that cannot be done; the message is for the grower. */
export class UndoRefused extends Error {}

type ChangedRow = {
  readonly table_name: string;
  readonly row_id: number;
  readonly before_json: string | null;
  readonly after_json: string | null;
};
type Cell = string | number | null;

/**
 * Gives every row that the change touched its state from before it. Runs inside the transaction of the undo, whose change is `undoId`.
 * Throws UndoRefused when a row is no longer as the change left it, or when putting it back would sweep other rows along.
 */
export function putRowsBack(sqlite: Database, changeId: number, undoId: number): void {
  sqlite.pragma("defer_foreign_keys = ON");
  // Newest first: each step back leads to a state that the tables have held before, so no constraint stands in the way.
  const rows = sqlite
    .prepare<[number], ChangedRow>(
      "SELECT table_name, row_id, before_json, after_json FROM change_row WHERE change_id = ? ORDER BY id DESC",
    )
    .all(changeId);
  const tables = new Map<string, TableWriter>();
  const writer = (table: string): TableWriter => {
    const known = tables.get(table) ?? new TableWriter(sqlite, table);
    tables.set(table, known);
    return known;
  };
  refuseChangedSince(rows, writer);
  for (const row of rows) writer(row.table_name).putBack(row);
  refuseSpread(sqlite, changeId, undoId);
  refuseOverfull(sqlite);
}

function refuseChangedSince(rows: readonly ChangedRow[], writer: (table: string) => TableWriter): void {
  const seen = new Set<string>();
  for (const { table_name, row_id, after_json } of rows) {
    const key = `${table_name} ${row_id}`;
    if (seen.has(key)) continue;
    seen.add(key);
    if (writer(table_name).imageNow(row_id) !== after_json)
      throw new UndoRefused(
        `Cannot undo this: ${inWords(table_name)} that it wrote has been changed since. Undo that first.`,
      );
  }
}

/** A booking may come back to recipes that take more than they did. */
function refuseOverfull(sqlite: Database): void {
  const [overfull] = overfullBookings(sqlite);
  if (overfull) throw new UndoRefused(`Cannot undo this: ${overfull}.`);
}

/** A parent that is taken back takes its children along. Those it did not come with were added since, and must not be lost unseen. */
function refuseSpread(sqlite: Database, changeId: number, undoId: number): void {
  const swept = sqlite
    .prepare<[number, number], { table_name: string }>(
      `SELECT table_name FROM change_row AS new_row WHERE change_id = ? AND NOT EXISTS (
        SELECT 1 FROM change_row WHERE change_id = ? AND table_name = new_row.table_name AND row_id = new_row.row_id) LIMIT 1`,
    )
    .get(undoId, changeId);
  if (swept)
    throw new UndoRefused(
      `Cannot undo this: ${inWords(swept.table_name)} added since belongs to what would be taken back. Undo that first.`,
    );
}

const inWords = (table: string): string => `${/^[aeiou]/.test(table) ? "an" : "a"} ${table.replaceAll("_", " ")}`;

/** Reads and writes whole rows of one table by id. A JSON image has the table's columns as its keys. */
class TableWriter {
  readonly #columns: readonly string[];
  readonly #image: Statement<[number], string>;
  readonly #remove: Statement<[number]>;
  readonly #add: Statement<Cell[]>;
  readonly #change: Statement<Cell[]>;

  constructor(sqlite: Database, table: string) {
    this.#columns = columnsOf(sqlite, table);
    const places = this.#columns.map(() => "?").join(", ");
    const settings = this.#columns.map((column) => `${column} = ?`).join(", ");
    this.#image = sqlite
      .prepare<[number], string>(`SELECT ${rowImage(this.#columns, table)} FROM ${table} WHERE id = ?`)
      .pluck();
    this.#remove = sqlite.prepare(`DELETE FROM ${table} WHERE id = ?`);
    this.#add = sqlite.prepare(`INSERT INTO ${table} (${this.#columns.join(", ")}) VALUES (${places})`);
    this.#change = sqlite.prepare(`UPDATE ${table} SET ${settings} WHERE id = ?`);
  }

  imageNow = (id: number): string | null => this.#image.get(id) ?? null;

  putBack({ row_id, before_json, after_json }: ChangedRow): void {
    if (before_json === null) {
      this.#remove.run(row_id);
      return;
    }
    const image: Record<string, Cell> = JSON.parse(before_json);
    const cells = this.#columns.map((column) => image[column]);
    if (after_json === null) this.#add.run(...cells);
    else this.#change.run(...cells, row_id);
  }
}
