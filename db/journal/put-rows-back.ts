import type { Database, Statement } from "better-sqlite3";
import { overfullBookings } from "#db/read/overfull-bookings";
import { columnsOf, rowImage } from "./journal-triggers";

/** An undo that cannot be done; the message is for the grower. */
export class UndoRefused extends Error {}

type ChangedRow = {
  readonly id: number;
  readonly table_name: string;
  readonly row_id: number;
  readonly before_json: string | null;
  readonly after_json: string | null;
};
type Cell = string | number | null;
type RowImage = Readonly<Record<string, Cell>>;

/**
 * Gives every row that the change touched its state from before it. Runs inside the transaction of the undo, whose change is `undoId`.
 *
 * A change made before its table had a column says nothing of it: there a row keeps what the newer version gave it, and one that comes back has
 * the column's own default.
 * Throws UndoRefused when a row is no longer as the change left it, or when putting it back would sweep other rows along.
 */
export function putRowsBack(sqlite: Database, changeId: number, undoId: number): void {
  sqlite.pragma("defer_foreign_keys = ON");
  // Newest first: each step back leads to a state that the tables have held before, so no constraint stands in the way.
  const rows = sqlite
    .prepare<[number], ChangedRow>(
      "SELECT id, table_name, row_id, before_json, after_json FROM change_row WHERE change_id = ? ORDER BY id DESC",
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
  for (const row of rows) {
    const { table_name, row_id } = row;
    const key = `${table_name} ${row_id}`;
    if (seen.has(key)) continue;
    seen.add(key);
    if (!writer(table_name).standsAsLeft(row))
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

/** Reads and writes rows of one table by id. A JSON image has the columns as its keys that the table had when it was made. */
class TableWriter {
  readonly #sqlite: Database;
  readonly #table: string;
  readonly #columns: readonly string[];
  readonly #image: Statement<[number], string>;
  readonly #columnSince: Statement<[string, number, number, string], Cell>;
  readonly #writes = new Map<string, Statement<Cell[]>>();

  constructor(sqlite: Database, table: string) {
    this.#sqlite = sqlite;
    this.#table = table;
    this.#columns = columnsOf(sqlite, table);
    if (this.#columns.length === 0) throw laidOutOtherwise(table);
    this.#image = sqlite
      .prepare<[number], string>(`SELECT ${rowImage(this.#columns, table)} FROM ${table} WHERE id = ?`)
      .pluck();
    this.#columnSince = sqlite
      .prepare<[string, number, number, string], Cell>(
        `SELECT json_extract(before_json, path) FROM change_row, (SELECT '$.' || ? AS path)
          WHERE row_id = ? AND id > ? AND table_name = ? AND json_type(before_json, path) IS NOT NULL ORDER BY id LIMIT 1`,
      )
      .pluck();
  }

  /** Whether a row is as the change left it, a column added to the table since as the newer version filled it. */
  standsAsLeft({ id, table_name, row_id, after_json }: ChangedRow): boolean {
    const now = this.#image.get(row_id) ?? null;
    if (now === after_json || now === null || after_json === null) return now === after_json;
    const left = this.#known(after_json);
    return Object.entries<Cell>(JSON.parse(now)).every(([column, cell]) => {
      if (column in left) return left[column] === cell;
      // The first change since that knew the column found it as it was filled; where there was none, so it stands.
      const filled = this.#columnSince.get(column, row_id, id, table_name);
      return filled === undefined || filled === cell;
    });
  }

  putBack({ row_id, before_json, after_json }: ChangedRow): void {
    if (before_json === null) {
      this.#write(`DELETE FROM ${this.#table} WHERE id = ?`).run(row_id);
      return;
    }
    const image = this.#known(before_json);
    const columns = Object.keys(image);
    const cells = Object.values(image);
    if (after_json === null)
      this.#write(
        `INSERT INTO ${this.#table} (${columns.join(", ")}) VALUES (${columns.map(() => "?").join(", ")})`,
      ).run(...cells);
    else {
      const settings = columns.map((column) => `${column} = ?`).join(", ");
      this.#write(`UPDATE ${this.#table} SET ${settings} WHERE id = ?`).run(...cells, row_id);
    }
  }

  /** An image, if the table still has all of its columns. */
  #known(json: string): RowImage {
    const image: RowImage = JSON.parse(json);
    if (Object.keys(image).some((column) => !this.#columns.includes(column))) throw laidOutOtherwise(this.#table);
    return image;
  }

  #write(sql: string): Statement<Cell[]> {
    const known = this.#writes.get(sql) ?? this.#sqlite.prepare<Cell[]>(sql);
    this.#writes.set(sql, known);
    return known;
  }
}

const laidOutOtherwise = (table: string): UndoRefused =>
  new UndoRefused(
    `Cannot undo this: an older version of the tool wrote ${inWords(table)} in a way that this one no longer keeps. A copy from before it still has it.`,
  );
