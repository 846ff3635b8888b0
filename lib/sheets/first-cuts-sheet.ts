import { yearOf } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR } from "#lib/domain/records/weather-day";
import type { PlantedFirstCut } from "#lib/plan/learning/first-cuts-on-record";
import { readTable } from "./table";

/** First cuts as read, and every row that was left out, with its line and why. */
export type FirstCutsSheet = {
  readonly rows: readonly PlantedFirstCut[];
  readonly problems: readonly { readonly line: number; readonly message: string }[];
};

/**
 * Reads first cuts: `year,first_cut`, with `planted_on` where plantings are meant; or days alone, one a line, as they are typed, the planting day before the first cut. A row
 * that is wrong is named and left out, and so is a second one of a year where no planting day is told; a year without a day says nothing.
 */
export function readFirstCuts(text: string): FirstCutsSheet {
  const isTyped = /^\s*\d/.test(text);
  const table = readTable(isTyped ? withHeader(text) : text);
  const toLine = (line: number) => (isTyped ? line - 1 : line);
  const [yearColumn, dayColumn, plantedColumn] = ["year", "first_cut", "planted_on"].map((name) =>
    table.header.indexOf(name),
  );
  if (yearColumn < 0 || dayColumn < 0)
    return { rows: [], problems: [{ line: table.headerLine, message: "the columns are year and first_cut" }] };
  const problems = table.problems.map(({ line, message }) => ({ line: toLine(line), message }));
  const rows: PlantedFirstCut[] = [];
  for (const { line: tableLine, cells } of table.rows) {
    if (cells[dayColumn].trim() === "") continue;
    const line = toLine(tableLine);
    const year = Number(cells[yearColumn]);
    const day = daySchema.safeParse(cells[dayColumn]);
    const written = plantedColumn < 0 ? "" : (cells[plantedColumn]?.trim() ?? "");
    const planted = written === "" ? null : daySchema.safeParse(written);
    if (!isWeatherYear(year))
      problems.push({
        line,
        message: `"${cells[yearColumn].slice(0, 30)}" is not a year from ${FIRST_WEATHER_YEAR} to ${LAST_WEATHER_YEAR}`,
      });
    else if (!day.success) problems.push({ line, message: day.error.issues[0].message });
    else if (planted !== null && !planted.success) problems.push({ line, message: planted.error.issues[0].message });
    else if (planted?.data && planted.data >= day.data)
      problems.push({ line, message: "the planting day is not before the first cut: write the planting day first" });
    else if (planted === null && rows.some((row) => row.year === year && row.plantedOn === undefined))
      problems.push({ line, message: `${year} stands a second time: keep one of the two lines` });
    else rows.push({ year, firstCut: day.data, ...(planted?.data && { plantedOn: planted.data }) });
  }
  return { rows, problems };
}

/** A first cut as it is typed and read back: its season, the planting day where there is one, and the day. */
export const firstCutInLine = ({ year, plantedOn, firstCut }: PlantedFirstCut): string =>
  [...(yearOf(firstCut) === year ? [] : [year]), ...(plantedOn ? [plantedOn] : []), firstCut].join(" ");

const isWeatherYear = (year: number): boolean =>
  Number.isInteger(year) && year >= FIRST_WEATHER_YEAR && year <= LAST_WEATHER_YEAR;

/** Typed lines under a header, a day alone in the season of its own year, and so the later of two. */
const withHeader = (text: string): string =>
  ["year,planted_on,first_cut", ...text.split(/\r?\n/).map((line) => withYear(line.trim()))].join("\n");

function withYear(line: string): string {
  const words = line.split(/[;,\t ]+/).filter((word) => word !== "");
  const days = words.map((word) => daySchema.safeParse(word)).filter(({ success }) => success);
  // Of a word that is no day the day is refused, whatever its year.
  if (words.length === 1) return `${days[0]?.data ? yearOf(days[0].data) : FIRST_WEATHER_YEAR},,${words[0]}`;
  if (words.length === 0) return line;
  if (words.length === 2 && days.length === 2 && days[1].data) return `${yearOf(days[1].data)},${words[0]},${words[1]}`;
  const [year, ...more] = words;
  return more.length > 1 && days.length > 1 ? `${year},${more.join(",")}` : `${year},,${more.join(" ")}`;
}
