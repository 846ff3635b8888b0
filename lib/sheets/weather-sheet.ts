import { toDay, toDayNumber, yearOf } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { FIRST_WEATHER_YEAR, LAST_WEATHER_YEAR, weatherOfDays } from "#lib/domain/records/weather-day";
import { COLDEST_C, type DailyWeather, HOTTEST_C, type TemperatureUnit, toCelsius } from "#lib/domain/weather";
import { readTable, type Table, type TableRow } from "./table";
import { otherUnitRuns } from "./weather-units";

/** Something in a weather file that was not taken, with the line it stands on (from 1) and how to mend it. */
type WeatherProblem = { readonly line: number; readonly message: string };

/** A weather file as read: its days, what was wrong, and how many days between first and last it lacks. `weather` is null when no day could be read. */
export type WeatherSheet = {
  readonly weather: DailyWeather | null;
  readonly unit: TemperatureUnit;
  readonly recordedDayCount: number;
  readonly missingDayCount: number;
  readonly problems: readonly WeatherProblem[];
};

/**
 * Reads daily highs and lows: a public daily summary (`DATE`, `TMAX`, `TMIN`, among others) or a plain table (`date`, `high`, `low`).
 * The unit is what the header says ("high F", "TMAX (Degrees Celsius)"), else `unit`. A day that stands twice, a low above its high, a temperature that
 * no place has, a cell that is no number, a stretch in another unit: each is a problem with its line and is left out; empty temperatures are missing days.
 */
export function readWeather(text: string, unit: TemperatureUnit): WeatherSheet {
  const table = readTable(text);
  const columns = columnsOf(table);
  const nothing = { weather: null, unit, recordedDayCount: 0, missingDayCount: 0 };
  if (!columns) {
    const message =
      table.problems[0]?.message ?? "the columns were not found: name them DATE, TMAX and TMIN, or date, high and low";
    return { ...nothing, problems: [{ line: table.headerLine, message }] };
  }
  const asRead = unitIn(table.header[columns.high]) ?? unit;
  const problems: WeatherProblem[] = [...table.problems];
  const rows = new Map<number, WeatherRow>();
  for (const row of table.rows) {
    const read = readRow(row, columns, asRead);
    if (read === null) continue;
    if ("message" in read) problems.push(read);
    else if (rows.has(read.day))
      problems.push({ line: row.line, message: `${toDay(read.day)} stands a second time; the first is used` });
    else rows.set(read.day, read);
  }
  for (const run of otherUnitRuns([...rows.values()].sort((a, b) => a.day - b.day))) {
    for (const { day } of run.rows) rows.delete(day);
    const last = run.rows[run.rows.length - 1];
    problems.push({
      line: run.rows[0].line,
      message: `from ${toDay(run.rows[0].day)} to ${toDay(last.day)} the temperatures look as if they were in ${run.likely}: give them in one unit, or in a file of their own`,
    });
  }
  problems.push(...impossible(rows));
  problems.sort((a, b) => a.line - b.line);
  const weather = weatherOfDays([...rows.values()]);
  const missingDayCount = (weather?.highC.length ?? 0) - rows.size;
  return { weather, unit: asRead, recordedDayCount: rows.size, missingDayCount, problems };
}

/** More impossible days than this are counted and not named: the whole file is then in another unit. */
const MOST_NAMED = 20;

/** Takes out days that no place on earth has had, and names them. */
function impossible(rows: Map<number, WeatherRow>): WeatherProblem[] {
  const found = [...rows.values()].filter(({ lowC, highC }) => lowC < COLDEST_C || highC > HOTTEST_C);
  for (const { day } of found) rows.delete(day);
  const named = found.slice(0, MOST_NAMED).map(({ line, day }) => ({
    line,
    message: `${toDay(day)} is beyond any place on earth in this unit: check the unit of the file`,
  }));
  const more = found.length - named.length;
  if (more > 0)
    named.push({ line: found[MOST_NAMED].line, message: `${more} more days are beyond any place on earth` });
  return named;
}

/** One day as read, degrees Celsius. */
export type WeatherRow = {
  readonly line: number;
  readonly day: number;
  readonly highC: number;
  readonly lowC: number;
};

type Columns = { readonly date: number; readonly high: number; readonly low: number };

/** Whether a header is that of daily weather as stations and growers write it, and not the farm's own sheet, which names its unit. */
export const isStationWeather = (header: readonly string[]): boolean =>
  columnsOf({ header }) !== null && !header.some((name) => /high_c/i.test(name));

function columnsOf({ header }: Pick<Table, "header">): Columns | null {
  const plain = header.map((name) =>
    name
      .toLowerCase()
      .replace(/\(.*\)|[^a-z]+/g, " ")
      .trim(),
  );
  const find = (words: RegExp) => plain.findIndex((name) => words.test(name));
  const date = find(/^(date|day)$/);
  const high = find(/^(tmax|high|max|maximum|temp max|daily high|high temperature)( [cf]| tenths)?$/);
  const low = find(/^(tmin|low|min|minimum|temp min|daily low|low temperature)( [cf]| tenths)?$/);
  return date < 0 || high < 0 || low < 0 ? null : { date, high, low };
}

/** The unit that a heading names, if it names one. */
function unitIn(heading: string): TemperatureUnit | null {
  if (/tenths/i.test(heading)) return "tenths";
  if (/fahrenheit|°\s*f|\bf\b|_f$/i.test(heading)) return "f";
  return /celsius|°\s*c|\bc\b|_c$/i.test(heading) ? "c" : null;
}

/** A day, a problem, or null for a day without temperatures. */
function readRow(
  { line, cells }: TableRow,
  columns: Columns,
  unit: TemperatureUnit,
): WeatherRow | WeatherProblem | null {
  const parsedDay = daySchema.safeParse(cells[columns.date].slice(0, 10));
  if (!parsedDay.success) return { line, message: `"${cells[columns.date].slice(0, 30)}" is not a day as YYYY-MM-DD` };
  const year = yearOf(parsedDay.data);
  if (year < FIRST_WEATHER_YEAR || year > LAST_WEATHER_YEAR)
    return { line, message: `no thermometer has recorded a day of ${year}: mend the year` };
  const texts = [cells[columns.high].trim(), cells[columns.low].trim()];
  if (texts.some((text) => text === "")) return null;
  const [high, low] = texts.map(Number);
  const wrong = texts.find((text) => !/^[+-]?\d+(\.\d+)?$/.test(text));
  if (wrong !== undefined)
    return { line, message: `"${wrong.slice(0, 30)}" is not a temperature: write digits, with a point for decimals` };
  const [highC, lowC] = [toCelsius(high, unit), toCelsius(low, unit)];
  if (lowC > highC) return { line, message: `the low, ${low}, lies above the high, ${high}` };
  return { line, day: toDayNumber(parsedDay.data), highC, lowC };
}
