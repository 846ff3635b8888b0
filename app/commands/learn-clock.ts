import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { z } from "zod";
import { TEMPERATURE_UNITS } from "#lib/domain/weather";
import { type ClockReport, clockReport, type ErrorsInDays } from "#lib/plan/learning/clock-report";
import { unusableInWords } from "#lib/plan/words/clock-words";
import { readFirstCuts } from "#lib/sheets/first-cuts-sheet";
import { readWeather } from "#lib/sheets/weather-sheet";

/**
 * `npm run clock -- --weather FILE --units c|f|tenths --dates FILE --train-until YEAR [--csv]`: learns a bloom clock from recorded first cuts and daily
 * weather, and shows how it would have told every later year, beside the calendar mean.
 */

const USAGE = "npm run clock -- --weather FILE --units c|f|tenths --dates FILE --train-until YEAR [--csv]";

const askedSchema = z.object({
  weather: z.string({ error: "--weather needs a file of DATE, TMAX and TMIN" }),
  units: z.enum(TEMPERATURE_UNITS, { error: "--units is c, f or tenths" }),
  dates: z.string({ error: "--dates needs a file of year and first_cut" }),
  "train-until": z.coerce.number({ error: "--train-until is a year" }).int().min(1001).max(8999),
  csv: z.boolean().default(false),
});

function main(): void {
  const asked = askedSchema.safeParse(argumentsGiven());
  if (!asked.success) refuse(asked.error.issues.map(({ message }) => message));
  const { weather: weatherFile, units, dates: datesFile, csv } = asked.data;
  const trainUntil = asked.data["train-until"];
  const sheet = readWeather(textOf(weatherFile), units);
  const firstCuts = readFirstCuts(textOf(datesFile));
  for (const { line, message } of sheet.problems) console.error(`${weatherFile}, line ${line}: ${message}`);
  for (const { line, message } of firstCuts.problems) console.error(`${datesFile}, line ${line}: ${message}`);
  if (!sheet.weather) refuse(["no day of weather could be read"]);
  if (firstCuts.rows.filter(({ year }) => year <= trainUntil).length < 3)
    refuse([`at least three first cuts up to ${trainUntil} are needed to learn from`]);
  const report = clockReport(sheet.weather, firstCuts.rows, trainUntil);
  for (const cut of report.leftOut) console.error(`${cut.year} is left out: ${unusableInWords(cut)}`);
  if (csv) console.log(inCsv(report));
  else console.log(inWords(report, sheet.missingDayCount));
}

function argumentsGiven() {
  const options = {
    weather: { type: "string" },
    units: { type: "string" },
    dates: { type: "string" },
    "train-until": { type: "string" },
    csv: { type: "boolean" },
  } as const;
  try {
    return parseArgs({ options }).values;
  } catch (error) {
    refuse([error instanceof Error ? error.message : String(error)]);
  }
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    refuse([`${file} cannot be read`]);
  }
}

function refuse(messages: readonly string[]): never {
  console.error([...messages, USAGE].join("\n"));
  process.exit(2);
}

function inCsv({ years }: ClockReport): string {
  const rows = years.map((told) => [told.year, told.recorded, told.predicted, told.predicted28, told.calendar].join());
  return ["year,recorded,predicted,predicted_28,calendar", ...rows].join("\n");
}

function inWords({ learned, years, errors, trainedYears }: ClockReport, missingDayCount: number): string {
  const [best] = learned.clocks;
  const shared =
    learned.clocks.length > 1 ? ` (${learned.clocks.length} clocks share the answer; this one says most)` : "";
  const told = best
    ? `heat from ${best.clock.startDay} days after 1 January, ${responseInWords(best.clock.response)}, to a sum of ${best.sum.toFixed(0)}${shared}`
    : "no clock of warmth beats the calendar mean here, so the calendar mean is used";
  const head = "year  recorded    predicted   28 days before  calendar";
  const rows = years.map(
    (row) => `${row.year}  ${row.recorded}  ${row.predicted}  ${row.predicted28}      ${row.calendar}`,
  );
  return [
    `Learned from ${trainedYears.length} years; ${missingDayCount} days of weather missing.`,
    `Clock: ${told}.`,
    `On years left out of its fit the best clock errs by ${learned.leftOut.bestClockDays.toFixed(1)} days, the calendar mean by ${learned.leftOut.calendarDays.toFixed(1)}.`,
    "",
    head,
    ...rows,
    "",
    "Errors in days (positive is late): mean, root mean square",
    errorLine("predicted", errors.predicted),
    errorLine("28 days before", errors.predicted28),
    errorLine("calendar mean", errors.calendar),
  ].join("\n");
}

const responseInWords = (response: { baseC: number } | { perTenDegrees: number }): string =>
  "baseC" in response
    ? `degree days above ${response.baseC} °C`
    : `${response.perTenDegrees} times as fast for each 10 °C`;

const errorLine = (name: string, { mean, rootMeanSquare }: ErrorsInDays): string =>
  `${name.padEnd(16)} ${mean.toFixed(1).padStart(6)} ${rootMeanSquare.toFixed(1).padStart(6)}`;

main();
