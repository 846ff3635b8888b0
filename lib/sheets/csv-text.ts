import Papa from "papaparse";

/** How a cell starts that a spreadsheet might run as a formula: with one of these, in their wide forms too, or with a tab or a line break. */
const RUNS = String.raw`(?:\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|[\t\r\n])`;
const WOULD_RUN = new RegExp(`^'*${RUNS}`);
const IS_HELD = new RegExp(`^'+${RUNS}`);
const NUMBER = /^[+-]?\d+(\.\d+)?(e[+-]?\d+)?$/i;

/**
 * A cell as a spreadsheet takes it for text: one that it might run gets an apostrophe before it. Numbers stay as they are. Inverse of
 * {@link asMeant}. Source: OWASP, CSV Injection, https://owasp.org/www-community/attacks/CSV_Injection
 */
export const asText = (cell: string): string => (WOULD_RUN.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell);

/** What a cell means that was written by {@link asText}: without the apostrophe that holds it. Any other cell is as it stands. */
export const asMeant = (cell: string): string => (IS_HELD.test(cell) ? cell.slice(1) : cell);

/** Rows of cells as CSV after RFC 4180: cells are quoted where they must be, lines end in CRLF, and no cell runs in a spreadsheet. */
export const csvText = (rows: readonly (readonly (string | number)[])[]): string =>
  `${Papa.unparse(
    rows.map((row) => row.map((cell) => (typeof cell === "number" ? cell : asText(cell)))),
    { newline: "\r\n" },
  )}\r\n`;
