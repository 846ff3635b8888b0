import { inQuotes } from "#lib/domain/in-quotes";
import { didYouMean } from "#lib/domain/nearest-name";
import { MOST_PROBLEMS } from "#lib/domain/problem";
import type { Fields, RecordOf } from "#lib/domain/records/field";
import { columnsOf, type SheetName } from "#lib/domain/records/sheets";
import type { Writing } from "#lib/domain/writing";
import { neededHeadings, readRow } from "./columns";
import { columnKey, headingsMeant, inUnitOf, unitAsked } from "./headings";
import { hasKeys, KEY_HEADING, type KeptRow } from "./known-farm";
import type { Place, SheetProblem } from "./sheet-problem";
import type { Table } from "./table";

/**
 * A row of a sheet: where it stands, its cells as written (for the names of rows that are wrong), whether its sheet has a column, what it
 * says if it is right, and the row of the farm that it stands for, if any.
 */
export type SheetRow<T> = {
  readonly place: Place;
  readonly textIn: (column: string) => string;
  readonly has: (column: string) => boolean;
  readonly record: T | null;
  readonly kept: KeptRow | null;
};

export type SheetRows<T> = { readonly rows: readonly SheetRow<T>[]; readonly problems: readonly SheetProblem[] };

/** Says that something is wrong with the row at hand; the row is then not clean. `column` null: the row as a whole. */
export type Say = (column: string | null, message: string) => void;

/** Reads every row of a table by the columns of its sheet; every wrong cell is a problem with its place, up to {@link MOST_PROBLEMS}. */
export function readRows<F extends Fields>(
  sheet: SheetName,
  fields: F,
  table: Table,
  file: string,
  writing: Writing,
): SheetRows<RecordOf<F>> {
  const meant = headingsMeant(fields, table.header);
  const keys = table.header.map((written, index) => meant[index]?.heading ?? columnKey(written));
  const indexOf = new Map(keys.map((key, index) => [key, index] as const).reverse());
  const problems: SheetProblem[] = headerProblems(sheet, fields, table.header).map((problem) => ({
    file,
    line: table.headerLine,
    ...problem,
  }));
  for (const problem of table.problems.slice(0, MOST_PROBLEMS)) problems.push({ file, column: null, ...problem });
  const rows = table.rows.map(({ line, cells }): SheetRow<RecordOf<F>> => {
    const textIn = (column: string) => {
      const index = indexOf.get(column);
      return index === undefined ? undefined : inUnitOf(cells[index] ?? "", meant[index]?.unit ?? null);
    };
    const reading = readRow(fields, textIn, writing);
    if (problems.length < MOST_PROBLEMS)
      for (const problem of reading.problems) problems.push({ file, line, ...problem });
    return {
      place: { file, line },
      textIn: (column) => textIn(column) ?? "",
      has: (column) => indexOf.has(column),
      record: reading.row,
      kept: null,
    };
  });
  return { rows, problems };
}

function headerProblems(sheet: SheetName, fields: Fields, header: readonly string[]) {
  const columns = columnsOf(fields);
  const known = [...columns.map(({ heading }) => heading), ...(hasKeys(sheet) ? [KEY_HEADING] : [])];
  const meant = headingsMeant(fields, header);
  const keys = header.map((written, index) => meant[index]?.heading ?? columnKey(written));
  const problems: { column: string | null; message: string }[] = [];
  const needed = neededHeadings(fields).filter((name) => !keys.includes(name));
  for (const name of needed)
    problems.push({
      column: name,
      message: `the ${sheet} sheet needs a column "${name}": add it, with ${columns.find(({ heading }) => heading === name)?.field.kind.hint}`,
    });
  const free = columns.map(({ heading }) => heading).filter((name) => !keys.includes(name));
  const firstAt = new Map(keys.map((key, index) => [key, index] as const).reverse());
  header.forEach((written, index) => {
    const key = keys[index] ?? "";
    if (key === "")
      problems.push({ column: null, message: `column ${index + 1} has no name: name it, or take it out of the sheet` });
    else if (!known.includes(key))
      problems.push({
        column: written,
        message: unitAsked(key, fields)
          ? `${inQuotes(written)} ${unitAsked(key, fields)}`
          : `the ${sheet} sheet has no column ${inQuotes(written)}: take it out${didYouMean(key, free) || `, or name it as one of ${columns.map(({ heading }) => heading).join(", ")}`}`,
      });
    else if (firstAt.get(key) !== index)
      problems.push({
        column: key,
        message: `the column "${key}" stands twice: only the first was read, take one out`,
      });
  });
  return problems;
}

/**
 * Turns each row that is right so far into its next form. Where `link` says something, or returns null, the row is not clean; rows
 * that were wrong already pass through. Order is kept.
 */
export function linkRows<T, Linked>(
  { rows, problems }: SheetRows<T>,
  link: (record: T, say: Say, row: SheetRow<T>) => Linked | null,
): SheetRows<Linked> {
  const found: SheetProblem[] = [...problems];
  const linked = rows.map((row): SheetRow<Linked> => {
    if (row.record === null) return { ...row, record: null };
    let isRight = true;
    const say: Say = (column, message) => {
      isRight = false;
      if (found.length < MOST_PROBLEMS) found.push({ ...row.place, column, message });
    };
    const next = link(row.record, say, row);
    return { ...row, record: isRight ? next : null };
  });
  return { rows: linked, problems: found };
}

/** What the rows say, put otherwise. */
export const mapRecords = <T, Next>({ rows, problems }: SheetRows<T>, put: (record: T) => Next): SheetRows<Next> => ({
  rows: rows.map((row) => ({ ...row, record: row.record === null ? null : put(row.record) })),
  problems,
});

/** The rows of several files of one sheet, one after another. */
export const joinRows = <T>(parts: readonly SheetRows<T>[]): SheetRows<T> => ({
  rows: parts.flatMap((part) => part.rows),
  problems: parts.flatMap((part) => part.problems),
});
