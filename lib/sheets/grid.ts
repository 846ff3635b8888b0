import { addDays } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { readDay } from "#lib/domain/read-day";
import type { Writing } from "#lib/domain/writing";
import { asMeant } from "./csv-text";
import { splitRows } from "./split-rows";
import { delimiterOf } from "./table";

/** What is typed into a grid: its rows of cells, as text, however wrong. */
export type GridRows = readonly (readonly string[])[];

/** More rows than anybody plants at once; a whole farm comes as a file. */
export const MOST_GRID_ROWS = 500;

/**
 * A grid with text from a spreadsheet laid into it, its first cell at `at`: cells beyond the last column go nowhere and are given back as
 * `spilt`, rows beyond the last are added. A first row that names the columns is passed over.
 */
export function pastedInto(
  rows: GridRows,
  at: { readonly row: number; readonly column: number },
  text: string,
  headings: readonly string[],
): { readonly rows: GridRows; readonly spilt: readonly string[] } {
  const split = splitRows(text, text.includes("\t") ? "\t" : delimiterOf(text));
  const isHeader = (cells: readonly string[]) =>
    cells.filter((cell) => cell.trim() !== "").every((cell) => headings.includes(cell.trim().toLowerCase()));
  const laid = split.rows
    .map(({ cells }) => cells.map(asMeant))
    .filter((cells, index) => index > 0 || !isHeader(cells));
  const next = rows.map((row) => [...row]);
  const spilt: string[] = [];
  laid.forEach((cells, down) => {
    const row = at.row + down;
    if (row >= MOST_GRID_ROWS) {
      spilt.push(cells.join(" "));
      return;
    }
    while (next.length <= row) next.push(Array<string>(headings.length).fill(""));
    cells.forEach((cell, right) => {
      const column = at.column + right;
      if (column < headings.length) next[row][column] = cell.trim();
      else if (cell.trim() !== "") spilt.push(cell.trim());
    });
  });
  return { rows: next, spilt: [...spilt, ...split.problems.map(({ message }) => message)] };
}

/** The row again, so many times, each so many days after the one before. Null where its day cannot be read. */
export function repeatedEvery(
  row: readonly string[],
  { dayColumn, everyDays, times }: { readonly dayColumn: number; readonly everyDays: number; readonly times: number },
  writing: Writing,
): GridRows | null {
  const reading = readDay(row[dayColumn] ?? "", writing);
  const first = reading.ok ? daySchema.safeParse(reading.value) : null;
  if (!first?.success) return null;
  return Array.from({ length: times }, (_, index) => row.with(dayColumn, addDays(first.data, everyDays * (index + 1))));
}
