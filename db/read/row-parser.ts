import { getTableName } from "drizzle-orm";
import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import { type Problem, problemsOf } from "#lib/domain/problem";
import { RowMemory } from "./row-memory";

/** What a domain schema offers here. */
export type Schema<T> = {
  safeParse(input: unknown): { success: true; data: T } | { success: false; error: Parameters<typeof problemsOf>[0] };
};

/** Parses rows one by one and gathers everything that is wrong with any of them, each under its row's id: "plantings[12].plantedOn". */
export class RowParser {
  readonly problems: Problem[] = [];
  readonly #memory: RowMemory;

  readonly #touched: ReadonlySet<string> | null;

  /**
   * @param memory   what was read last: rows that say the same are not parsed again
   * @param touched  the tables that were written since; null when any may have been
   */
  constructor(memory = new RowMemory(), touched: ReadonlySet<string> | null = null) {
    this.#memory = memory;
    this.#touched = touched;
  }

  /** A list that is read from some tables: as it was read last, where none of them was written since. */
  unlessKnown<T>(name: string, tables: readonly SQLiteTable[], read: () => readonly T[]): readonly T[] {
    const isKnown = this.#touched !== null && !tables.some((table) => this.#touched?.has(getTableName(table)));
    // What is remembered under a name was read in the same way.
    return ((isKnown && this.#memory.list(name)) || read()) as readonly T[];
  }

  /** The rows that parse, in their order. `shape` gives a row the form that `schema` parses, when it has not got it. */
  all<Row extends { readonly id: number }, T>(
    name: string,
    schema: Schema<T>,
    rows: readonly Row[],
    shape: (row: Row) => unknown = (row) => row,
  ): readonly T[] {
    return this.#list(
      name,
      schema,
      rows.map((row) => ({ id: row.id, place: `${name}[${row.id}]`, shaped: shape(row) })),
    );
  }

  /** The only row of its kind, or undefined when it does not parse. */
  one<T>(name: string, schema: Schema<T>, row: unknown): T | undefined {
    return this.#list(name, schema, [{ id: 0, place: name, shaped: row }])[0];
  }

  #list<T>(
    name: string,
    schema: Schema<T>,
    rows: readonly { readonly id: number; readonly place: string; readonly shaped: unknown }[],
  ): readonly T[] {
    const remembered = new Map<number, { said: string; parsed: unknown }>();
    for (const { id, place, shaped } of rows) {
      const said = JSON.stringify(shaped);
      const parsed = this.#memory.find(name, id, said) ?? this.#parsed(place, schema, shaped);
      if (parsed !== undefined) remembered.set(id, { said, parsed });
    }
    // What is remembered under a name was parsed by the schema of that name.
    return this.#memory.keep(name, remembered) as readonly T[];
  }

  #parsed<T>(place: string, schema: Schema<T>, shaped: unknown): T | undefined {
    const read = schema.safeParse(shaped);
    if (read.success) return read.data;
    this.problems.push(...problemsOf(read.error, place));
    return undefined;
  }

  /** Children by the id of their parent, in their order. Those whose parent is missing are problems. */
  byParent<Row extends { readonly id: number }>(
    name: string,
    parents: readonly { readonly id: number }[],
    rows: readonly Row[],
    parentOf: (row: Row) => number,
  ): (parentId: number) => readonly Row[] {
    const children = new Map<number, Row[]>(parents.map(({ id }) => [id, []]));
    for (const row of rows) {
      const siblings = children.get(parentOf(row));
      if (siblings) siblings.push(row);
      else
        this.problems.push({
          place: `${name}[${row.id}]`,
          message: `belongs to ${parentOf(row)}, which does not exist`,
        });
    }
    return (parentId) => children.get(parentId) ?? [];
  }
}
