import type { z } from "zod";
import type { ColumnOf, SheetName } from "#lib/domain/sheet-columns";
import type { Cell, CellReading } from "./cells";

/**
 * A column of a sheet: how its cells are read, the schema of lib/domain that holds their limits, and what an empty cell or an absent
 * column means (an empty cell of free text is an empty text). `absent` null: the column must be there and filled.
 */
export type Column<T> = {
  readonly hint: string;
  readonly absent: { readonly value: T } | null;
  readonly isEmpty: (text: string) => boolean;
  readonly read: (text: string) => CellReading<T>;
};

/** The columns of a sheet: exactly those that {@link SHEET_COLUMNS} names. */
export type ColumnsOf<Name extends SheetName> = { readonly [Key in ColumnOf<Name>]: Column<unknown> };

/** What a row says, column by column. */
export type RowOf<Columns> = {
  readonly [Key in keyof Columns]: Columns[Key] extends Column<infer T> ? T : never;
};

/** A column that must be there and filled. */
export const needed = <T>(cell: Cell<unknown>, schema: z.ZodType<T>): Column<T> => ({
  ...reader(cell, schema),
  absent: null,
});

/** A column that may be absent or empty, which then means `absent`. */
export const maybe = <T, Absent>(cell: Cell<unknown>, schema: z.ZodType<T>, absent: Absent): Column<T | Absent> => ({
  ...reader(cell, schema),
  absent: { value: absent },
});

function reader<T>(cell: Cell<unknown>, schema: z.ZodType<T>) {
  return {
    hint: cell.hint,
    isEmpty: (text: string) => !cell.keepsSpaces && text.trim() === "",
    read: (text: string): CellReading<T> => {
      const written = cell.keepsSpaces ? text : text.trim();
      if (written.includes("\uFFFD"))
        return {
          ok: false,
          message: `letters were lost in "${written}": save the sheet as CSV in UTF-8 and bring it again`,
        };
      const reading = cell.read(written);
      if (!reading.ok) return reading;
      const checked = schema.safeParse(reading.value);
      if (checked.success) return { ok: true, value: checked.data };
      const rules = [...new Set(checked.error.issues.map((issue) => issue.message))].join("; ");
      const mend = /\bwrite\b/.test(rules) ? "" : "; change it to fit";
      return { ok: false, message: `"${written}" will not do here: ${rules}${mend}` };
    },
  };
}

export type ColumnProblem = { readonly column: string | null; readonly message: string };

/** The row, or null when a cell of it is wrong or a needed column is absent; `problems` names each wrong cell. */
export type RowReading<Columns> = { readonly row: RowOf<Columns> | null; readonly problems: readonly ColumnProblem[] };

/**
 * Reads one row. `textIn` gives the text in a column, or undefined when the sheet has no such column: that is a problem of the header
 * and said there, once.
 */
export function readRow<Columns extends Record<string, Column<unknown>>>(
  columns: Columns,
  textIn: (column: string) => string | undefined,
): RowReading<Columns> {
  const problems: ColumnProblem[] = [];
  const row: Record<string, unknown> = {};
  let isWhole = true;
  for (const [name, column] of Object.entries(columns)) {
    const text = textIn(name);
    if (text === undefined || column.isEmpty(text)) {
      if (column.absent) row[name] = column.absent.value;
      else isWhole = false;
      if (!column.absent && text !== undefined)
        problems.push({ column: name, message: `${name} is empty: write ${column.hint}` });
      continue;
    }
    const reading = column.read(text);
    if (reading.ok) row[name] = reading.value;
    else problems.push({ column: name, message: reading.message });
  }
  return { row: isWhole && problems.length === 0 ? (row as RowOf<Columns>) : null, problems };
}
