import { asMeant } from "./csv-text";
import { type Delimiter, type SplitRow, type SplitRows, splitRows } from "./split-rows";

/** A row of a table: as many cells as the header, exact, and the line of the file it starts on (from 1). */
export type TableRow = SplitRow;

/** A row that cannot be read, or a table without a header. */
type TableProblem = { readonly line: number; readonly message: string };

/**
 * A table as it was written. `problems` has one entry for each row that could not be read (they are not among `rows`), or one alone
 * when there is no header; then `header` is empty.
 */
export type Table = {
  readonly header: readonly string[];
  readonly headerLine: number;
  readonly rows: readonly TableRow[];
  readonly problems: readonly TableProblem[];
};

/** More columns than any sheet of the farm has, with room for a grower's own. */
export const MOST_COLUMNS = 200;

/**
 * Reads a table from text: the first row with any text is the header. The delimiter (comma, semicolon or tab) is the one that stands
 * most often in the header, comma when none does. Rows must have as many cells as the header; columns that have neither a name nor
 * a value, as spreadsheets leave behind, are dropped, and so is the apostrophe that holds a cell which a spreadsheet would run.
 */
export const readTable = (text: string): Table => tableOf(splitRows(text, delimiterOf(text)));

/**
 * A sheet of a workbook as a table: empty cells at the end of a row need not be there. A row with a cell that cannot be read is a problem and
 * not among the rows.
 */
export function tableOfWorksheet({ rows, problems }: SplitRows): Table {
  const width = usedWidth(rows.slice(0, 1));
  const wrongLines = new Set(problems.map(({ line }) => line));
  const filled = rows
    .filter(({ line }) => !wrongLines.has(line))
    .map(({ line, cells }) => {
      const used = cells.slice(0, Math.max(width, cells.findLastIndex((cell) => cell.trim() !== "") + 1));
      return { line, cells: [...used, ...Array<string>(Math.max(0, width - used.length)).fill("")] };
    });
  return tableOf({ rows: filled, problems });
}

function tableOf({ rows: found, problems }: SplitRows): Table {
  const [header, ...body] = found;
  const inHeader = problems.find((problem) => !header || problem.line < header.line);
  if (inHeader) return { header: [], headerLine: inHeader.line, rows: [], problems: [inHeader] };
  if (!header) {
    const message = "the sheet is empty: the first row must name its columns";
    return { header: [], headerLine: 1, rows: [], problems: [{ line: 1, message }] };
  }
  const width = usedWidth(found);
  if (width > MOST_COLUMNS) {
    const message = `the sheet has ${width} columns: leave out those that are not the farm's, and keep at most ${MOST_COLUMNS}`;
    return { header: [], headerLine: header.line, rows: [], problems: [{ line: header.line, message }] };
  }
  const names = header.cells.slice(0, width);
  const rows: TableRow[] = [];
  const ragged: TableProblem[] = [];
  for (const { line, cells } of body) {
    if (cells.length === header.cells.length) rows.push({ line, cells: cells.slice(0, width).map(asMeant) });
    else ragged.push({ line, message: raggedMessage(cells.length, header.cells.length) });
  }
  const all = [...problems, ...ragged].sort((a, b) => a.line - b.line);
  return { header: names, headerLine: header.line, rows, problems: all };
}

/** The delimiter that stands most often, outside quotes, in the first line with any text. */
export function delimiterOf(text: string): Delimiter {
  const counts: Record<Delimiter, number> = { ",": 0, ";": 0, "\t": 0 };
  let isQuoted = false;
  let hasText = false;
  for (const letter of text.replace(/^\uFEFF/, "")) {
    if (letter === '"') isQuoted = !isQuoted;
    else if (isQuoted) continue;
    else if (letter === "," || letter === ";" || letter === "\t") counts[letter] += 1;
    else if (letter === "\n" || letter === "\r") {
      if (hasText) break;
      counts[","] = counts[";"] = counts["\t"] = 0;
    }
    hasText ||= letter.trim() !== "" && letter !== "," && letter !== ";";
  }
  if (counts["\t"] > counts[","] && counts["\t"] > counts[";"]) return "\t";
  return counts[";"] > counts[","] ? ";" : ",";
}

/** Columns up to the last that has a name or, in a row as wide as the header, a value. */
function usedWidth([header, ...body]: readonly SplitRow[]): number {
  if (!header) return 0;
  const usedIn = ({ cells }: SplitRow) => cells.findLastIndex((cell) => cell.trim() !== "") + 1;
  const wide = body.filter(({ cells }) => cells.length === header.cells.length);
  return wide.reduce((width, row) => Math.max(width, usedIn(row)), usedIn(header));
}

function raggedMessage(cellCount: number, headerCount: number): string {
  const rule = `this row has ${cellCount} cells and the header ${headerCount}`;
  return cellCount < headerCount
    ? `${rule}: fill the row up with empty cells, and check that no delimiter was lost`
    : `${rule}: put cells that contain the delimiter in quotes, or take the extra cells out`;
}
