import { toDay } from "#lib/domain/day";
import { toFahrenheit } from "#lib/domain/weather";
import type { WeatherRow } from "./weather-sheet";

/** Neighbouring days whose temperatures look as if they had been written in another unit than the rest of the file. */
export type OtherUnitRun = { readonly rows: readonly WeatherRow[]; readonly likely: string };

/** A month is taken for another unit when its middle high lies at least so far from the same month of other years … */
const FAR_C = 14;
/** … and, read in that unit, at most so far. Both are our choice: no recorded month strays by 14 degrees. */
const NEAR_C = 7;

/** What a temperature in degrees Celsius would have been, had the file meant another unit. */
const READINGS: readonly { readonly likely: string; readonly asC: (readC: number) => number }[] = [
  { likely: "°F", asC: (readC) => ((readC - 32) * 5) / 9 },
  { likely: "°C", asC: toFahrenheit },
  { likely: "tenths of °C", asC: (readC) => readC / 10 },
  { likely: "whole °C", asC: (readC) => readC * 10 },
];

/**
 * Finds months written in another unit: the middle high of a month is compared with the middle high of that month in the other years of the file. Needs
 * three years of a month to say anything. Rows must be in order of day.
 */
export function otherUnitRuns(rows: readonly WeatherRow[]): OtherUnitRun[] {
  const months = byMonth(rows);
  const middles = new Map<string, number[]>();
  for (const [month, ofMonth] of months) {
    const of = month.slice(5);
    middles.set(of, [...(middles.get(of) ?? []), middle(ofMonth.map(({ highC }) => highC))]);
  }
  const runs: { rows: WeatherRow[]; likely: string }[] = [];
  let before = "";
  for (const [month, ofMonth] of months) {
    const others = middles.get(month.slice(5)) ?? [];
    const likely = others.length < 3 ? null : otherUnit(middle(ofMonth.map(({ highC }) => highC)), middle(others));
    const run = runs[runs.length - 1];
    if (likely === null) before = "";
    else if (run && before === likely) run.rows.push(...ofMonth);
    else runs.push({ rows: [...ofMonth], likely });
    before = likely ?? "";
  }
  return runs;
}

function otherUnit(highC: number, usualC: number): string | null {
  if (Math.abs(highC - usualC) < FAR_C) return null;
  return READINGS.find(({ asC }) => Math.abs(asC(highC) - usualC) <= NEAR_C)?.likely ?? null;
}

function byMonth(rows: readonly WeatherRow[]): Map<string, WeatherRow[]> {
  const months = new Map<string, WeatherRow[]>();
  for (const row of rows) {
    const month = toDay(row.day).slice(0, 7);
    const known = months.get(month);
    if (known) known.push(row);
    else months.set(month, [row]);
  }
  return months;
}

const middle = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[numbers.length >> 1];
