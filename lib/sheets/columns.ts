import type { z } from "zod";
import { inQuotes } from "#lib/domain/in-quotes";
import type { TextReading } from "#lib/domain/read-number";
import { type Field, type Fields, headingOf, type RecordOf } from "#lib/domain/records/field";
import type { Kind } from "#lib/domain/records/kinds";
import type { ColumnOf, SheetName } from "#lib/domain/sheet-columns";

/**
 * A column of a sheet: how its cells are read, the schema of lib/domain that holds their limits, and what an empty cell or an absent
 * column means (an empty cell of free text is an empty text). `absent` null: the column must be there and filled.
 */
export type Column<T> = {
  readonly hint: string;
  readonly absent: { readonly value: T } | null;
  readonly isEmpty: (text: string) => boolean;
  readonly read: (text: string) => TextReading<T>;
};

/** The columns of a sheet: exactly those that {@link SHEET_COLUMNS} names. */
export type ColumnsOf<Name extends SheetName> = { readonly [Key in ColumnOf<Name>]: Column<unknown> };

/** What a row says, column by column. */
export type RowOf<Columns> = {
  readonly [Key in keyof Columns]: Columns[Key] extends Column<infer T> ? T : never;
};

/** A column that must be there and filled. */
export const needed = <T>(cell: Kind<never>, schema: z.ZodType<T>): Column<T> => ({
  ...reader(cell, schema),
  absent: null,
});

/** A column that may be absent or empty, which then means `absent`. */
export const maybe = <T, Absent>(cell: Kind<never>, schema: z.ZodType<T>, absent: Absent): Column<T | Absent> => ({
  ...reader(cell, schema),
  absent: { value: absent },
});

function reader<T>(cell: Kind<never>, schema: z.ZodType<T>) {
  return {
    hint: cell.hint,
    isEmpty: (text: string) => !cell.keepsSpaces && text.trim() === "",
    read: (text: string): TextReading<T> => {
      const written = cell.keepsSpaces ? text : text.trim();
      if (written.length > MOST_CELL_LETTERS)
        return {
          ok: false,
          message: `${inQuotes(written)} has ${written.length} letters: write at most ${MOST_CELL_LETTERS}`,
        };
      if (written.includes("\uFFFD"))
        return {
          ok: false,
          message: `letters were lost in ${inQuotes(written)}: save the sheet as CSV in UTF-8 and bring it again`,
        };
      const reading = cell.read(written);
      if (!reading.ok) return reading;
      const checked = schema.safeParse(reading.value);
      if (checked.success) return { ok: true, value: checked.data };
      const rules = [...new Set(checked.error.issues.map((issue) => issue.message))].join("; ");
      const mend = /\bwrite\b/.test(rules) ? "" : "; change it to fit";
      return { ok: false, message: `${inQuotes(written)} will not do here: ${rules}${mend}` };
    },
  };
}

/** More than any cell of a farm holds: a note has at most 4,000 letters. Longer ones are refused before they are looked into. */
export const MOST_CELL_LETTERS = 20_000;

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

/** The columns of a sheet whose rows have these fields, by heading. */
export const columnsOf = (fields: Fields): Readonly<Record<string, Column<unknown>>> =>
  Object.fromEntries(Object.entries(fields).map(([name, field]) => [headingOf(name, field), columnOf(field)]));

const columnOf = ({ kind, schema, absent }: Field<unknown>): Column<unknown> => ({
  ...reader(kind, schema),
  absent: absent === undefined ? null : { value: absent },
});

/** A row, known by its headings, as the record that its fields make. */
export const recordOf =
  <F extends Fields>(fields: F) =>
  (row: Readonly<Record<string, unknown>>): RecordOf<F> =>
    Object.fromEntries(
      Object.entries(fields).map(([name, field]) => [name, row[headingOf(name, field)]]),
    ) as RecordOf<F>;

/** What a record says in each column of its sheet, as text. */
export const cellsOf = <F extends Fields>(fields: F, record: RecordOf<F>): Record<string, string> =>
  Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [headingOf(name, field), cellOf(field, record[name])]),
  );

const cellOf = (field: Field<unknown>, value: unknown): string =>
  value === null || value === undefined ? "" : field.kind.write(value);
