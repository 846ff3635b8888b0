import Papa from "papaparse";

/** A row of a file of separated values: its cells, exact, and the line of the file it starts on (from 1). */
export type SplitRow = { readonly line: number; readonly cells: readonly string[] };

/** Quotes that do not close as they should, with the line of the cell at fault. */
type QuoteProblem = { readonly line: number; readonly message: string };

export type SplitRows = { readonly rows: readonly SplitRow[]; readonly problems: readonly QuoteProblem[] };

export type Delimiter = "," | ";" | "\t";

/** Lines of one upload, blank ones too: three times the rows of a farm of 4,000 beds and 4,000 bookings. What has more is no farm's. */
export const MOST_LINES = 120_000;

/** Files with more bad quotes than this are mangled throughout; each costs another walk to the end of the file. */
const MOST_QUOTE_PROBLEMS = 25;

const lineBreakCount = (text: string): number => text.match(/\r\n|\n|\r/g)?.length ?? 0;

/**
 * Splits text into rows by RFC 4180: cells may be quoted, a quote inside is doubled, quoted cells keep their line breaks and
 * delimiters. Lines end in CRLF or LF, mixed as they come, or in CR alone throughout. A byte order mark is dropped. Rows without any
 * text (blank lines, or delimiters alone) are left out, and line numbers stay true. After a cell whose quote does not close, reading
 * goes on with the next line, so that one slip does not swallow the rest of the file. After {@link MOST_LINES} reading stops with a problem.
 *
 * Source: RFC 4180, section 2, https://www.rfc-editor.org/rfc/rfc4180
 */
export function splitRows(text: string, delimiter: Delimiter): SplitRows {
  const rows: SplitRow[] = [];
  const problems: QuoteProblem[] = [];
  let lineCount = 0;
  const newline = text.includes("\n") ? "\n" : text.includes("\r") ? "\r" : "\n";
  let rest = text;
  let line = 1;
  while (rest) {
    // The parser drops a byte order mark itself and then counts without it, so none may reach it.
    const part = splitUntilBadQuote(rest.replace(/^\uFEFF+/, ""), delimiter, newline, line, MOST_LINES - lineCount);
    lineCount += part.lineCount;
    for (const row of part.rows) rows.push(row);
    if (!part.problem) break;
    problems.push(part.problem);
    if (problems.length === MOST_QUOTE_PROBLEMS) {
      problems.push({
        line: part.problem.line + 1,
        message: `${MOST_QUOTE_PROBLEMS} cells have bad quotes: mend those first, the lines from here on were not read`,
      });
      break;
    }
    rest = part.rest;
    line = part.problem.line + 1;
  }
  return { rows, problems };
}

type Part = {
  readonly rows: readonly SplitRow[];
  readonly lineCount: number;
  readonly problem: QuoteProblem | null;
  readonly rest: string;
};

function splitUntilBadQuote(
  text: string,
  delimiter: Delimiter,
  newline: "\n" | "\r",
  firstLine: number,
  mostLines: number,
): Part {
  const rows: SplitRow[] = [];
  let problem: QuoteProblem | null = null;
  let rest = "";
  let lineCount = 0;
  let line = firstLine;
  let start = 0;
  Papa.parse<string[]>(text, {
    delimiter,
    newline,
    fastMode: false,
    step: (row, parser) => {
      lineCount += 1;
      if (lineCount > mostLines) {
        problem = { line, message: `more than ${MOST_LINES} lines: bring the rows in parts, and take empty ones out` };
        parser.abort();
        return;
      }
      const raw = text.slice(start, row.meta.cursor);
      const fault = row.errors.find((error) => error.type === "Quotes");
      if (fault) {
        const at = fault.index ?? start;
        const lineEnd = text.indexOf(newline, at);
        problem = { line: line + lineBreakCount(text.slice(start, at)), message: quoteMessage(fault.code) };
        rest = lineEnd < 0 ? "" : text.slice(lineEnd + 1);
        parser.abort();
        return;
      }
      const cells = withoutCarriageReturn(row.data, raw, delimiter, newline);
      if (cells.some((cell) => cell.trim() !== "")) rows.push({ line, cells });
      line += lineBreakCount(raw);
      start = row.meta.cursor;
    },
  });
  return { rows, lineCount, problem, rest };
}

const quoteMessage = (code: string): string =>
  code === "MissingQuotes"
    ? 'a quote is opened here and never closed: close it with ", or double it ("") if it belongs to the text'
    : 'text stands behind a closing quote: put the whole cell in one pair of quotes and double each quote inside it ("")';

/** The reader ends lines at LF; the CR of a CRLF is then left on the last cell, unless that cell was quoted. */
function withoutCarriageReturn(
  cells: readonly string[],
  raw: string,
  delimiter: Delimiter,
  newline: "\n" | "\r",
): readonly string[] {
  const last = cells.at(-1);
  if (!last?.endsWith("\r") || newline === "\r") return cells;
  const written = raw.endsWith("\n") ? raw.slice(0, -1) : raw;
  const before = written.length - last.length;
  const isUnquoted = written.endsWith(last) && (before === 0 || written[before - 1] === delimiter);
  return isUnquoted ? [...cells.slice(0, -1), last.slice(0, -1)] : cells;
}
