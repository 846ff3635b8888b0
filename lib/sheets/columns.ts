import { inQuotes } from "#lib/domain/in-quotes";
import { readMeasured } from "#lib/domain/read-measure";
import type { DecimalMark, TextReading } from "#lib/domain/read-number";
import type { Field, Fields, RecordOf } from "#lib/domain/records/field";
import { type Column, columnsOf } from "#lib/domain/records/sheets";
import type { Writing } from "#lib/domain/writing";

/** More than any cell of a farm holds: a note has at most 4,000 letters. Longer ones are refused before they are looked into. */
export const MOST_CELL_LETTERS = 20_000;

export type ColumnProblem = { readonly column: string | null; readonly message: string };

/** The row, or null when a cell of it is wrong or a needed column is absent; `problems` names each wrong cell. */
export type RowReading<Row> = { readonly row: Row | null; readonly problems: readonly ColumnProblem[] };

/** The columns that a sheet of these fields cannot do without. */
export const neededHeadings = (fields: Fields): string[] =>
  columnsOf(fields)
    .filter(({ field }) => field.absent === undefined)
    .map(({ heading }) => heading);

/** A cell that says nothing; an empty cell of free text says an empty text. */
const isEmpty = ({ kind }: Field<unknown>, text: string): boolean => !kind.keepsSpaces && text.trim() === "";

/**
 * Reads one row. `textIn` gives the text in a column, or undefined when the sheet has no such column: that is a problem of the header
 * and said there, once.
 */
export function readRow<F extends Fields>(
  fields: F,
  textIn: (heading: string) => string | undefined,
  writing?: Writing,
): RowReading<RecordOf<F>> {
  const problems: ColumnProblem[] = [];
  const record: Record<string, unknown> = {};
  let isWhole = true;
  for (const column of columnsOf(fields)) {
    const { heading, field } = column;
    const text = textIn(heading);
    if (text === undefined || isEmpty(field, text)) {
      if (field.absent !== undefined) put(record, column, field.absent);
      else isWhole = false;
      if (field.absent === undefined && text !== undefined)
        problems.push({ column: heading, message: `${heading} is empty: write ${field.kind.hint}` });
      continue;
    }
    const reading = readCell(field, text, writing);
    if (reading.ok) put(record, column, reading.value);
    else problems.push({ column: heading, message: reading.message });
  }
  return { row: isWhole && problems.length === 0 ? (record as RecordOf<F>) : null, problems };
}

function put(record: Record<string, unknown>, { name, part }: Column, value: unknown): void {
  if (part === null) record[name] = value;
  else if (part === "count") record[name] = { count: value };
  else record[name] = Object.assign({}, record[name], value);
}

/** What a cell says, within the limits of its field. */
export function readCell<T>({ kind, schema, measure }: Field<T>, text: string, writing?: Writing): TextReading<T> {
  const written = kind.keepsSpaces ? text : text.trim();
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
  const reading = readMeasured(written, measure, writing?.decimalMark) ?? kind.read(written, writing);
  if (!reading.ok) return reading;
  const checked = schema.safeParse(reading.value);
  if (checked.success) return { ok: true, value: checked.data };
  const rules = [...new Set(checked.error.issues.map((issue) => issue.message))].join("; ");
  const mend = /\bwrite\b/.test(rules) ? "" : "; change it to fit";
  return { ok: false, message: `${inQuotes(written)} will not do here: ${rules}${mend}` };
}

/** What a record says in each column of its sheet, in their order. */
export const cellsOf = <F extends Fields>(fields: F, record: RecordOf<F>, mark?: DecimalMark): string[] =>
  columnsOf(fields).map(({ name, part, field }) => {
    const value = record[name];
    return writeCell(field, part === "count" ? (value as { count: number }).count : value, mark);
  });

/** A value as its cell says it, so that it reads back to the same; nothing for null. */
export const writeCell = ({ kind }: Field<unknown>, value: unknown, mark?: DecimalMark): string =>
  value === null || value === undefined ? "" : kind.write(value, mark);
