import { daySchema, yearOf } from "#lib/domain/day";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR } from "#lib/domain/records/weather-day";
import type { RecordedFirstCut } from "#lib/plan/learning/recorded-seasons";
import { readTable } from "./table";

/** First cuts as read, and every row that was left out, with its line and why. */
export type FirstCutsSheet = {
  readonly rows: readonly RecordedFirstCut[];
  readonly problems: readonly { readonly line: number; readonly message: string }[];
};

/**
 * Reads first cuts: `year,first_cut`, or days alone, one a line, as they are typed. A row that is wrong is named and left out, and so is a second
 * one of a year; a year without a day says nothing.
 */
export function readFirstCuts(text: string): FirstCutsSheet {
  const isTyped = /^\s*\d/.test(text);
  const table = readTable(isTyped ? withHeader(text) : text);
  const toLine = (line: number) => (isTyped ? line - 1 : line);
  const [yearColumn, dayColumn] = ["year", "first_cut"].map((name) => table.header.indexOf(name));
  if (yearColumn < 0 || dayColumn < 0)
    return { rows: [], problems: [{ line: table.headerLine, message: "the columns are year and first_cut" }] };
  const problems = table.problems.map(({ line, message }) => ({ line: toLine(line), message }));
  const rows: RecordedFirstCut[] = [];
  for (const { line: tableLine, cells } of table.rows) {
    if (cells[dayColumn].trim() === "") continue;
    const line = toLine(tableLine);
    const year = Number(cells[yearColumn]);
    const day = daySchema.safeParse(cells[dayColumn]);
    if (!isWeatherYear(year))
      problems.push({
        line,
        message: `"${cells[yearColumn].slice(0, 30)}" is not a year from ${FIRST_WEATHER_YEAR} to ${LAST_WEATHER_YEAR}`,
      });
    else if (!day.success) problems.push({ line, message: day.error.issues[0].message });
    else if (rows.some((row) => row.year === year)) problems.push({ line, message: `${year} stands a second time` });
    else rows.push({ year, firstCut: day.data });
  }
  return { rows, problems };
}

const isWeatherYear = (year: number): boolean =>
  Number.isInteger(year) && year >= FIRST_WEATHER_YEAR && year <= LAST_WEATHER_YEAR;

/** Typed lines under a header, a day alone in the season of its own year. */
const withHeader = (text: string): string =>
  ["year,first_cut", ...text.split(/\r?\n/).map((line) => withYear(line.trim()))].join("\n");

function withYear(line: string): string {
  const day = daySchema.safeParse(line);
  return day.success ? `${yearOf(day.data)},${day.data}` : line.replace(/[;\t ]+/, ",");
}
