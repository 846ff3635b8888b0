import { z } from "zod";
import { parseDay, toDay, toDayNumber, yearOf } from "../day";
import { daySchema } from "../day-schema";
import { COLDEST_C, type DailyWeather, HOTTEST_C } from "../weather";
import { field, number, type RecordOf } from "./field";
import { day } from "./kinds";

const temperature = { of: "degrees Celsius", unit: "°C", least: COLDEST_C, most: HOTTEST_C } as const;

/** A recorded day as its sheet says it, degrees Celsius to a tenth. Metric on every farm, as all sheets are. */
export const WEATHER_SHEET = {
  date: field(day, daySchema, { label: "Day" }),
  highC: number({ ...temperature, label: "High" }),
  lowC: number({ ...temperature, label: "Low" }),
};

/** A recorded day. */
export type WeatherDay = Readonly<RecordOf<typeof WEATHER_SHEET>>;

/** Years that a thermometer can have recorded. */
export const FIRST_WEATHER_YEAR = 1700;
export const LAST_WEATHER_YEAR = 2200;

/** Whole tenths of a degree Celsius, or null for a day that nobody recorded; kept as JSON text. */
const tenthsSchema = z.string().transform((text, context): readonly (number | null)[] => {
  const listed = z
    .array(
      z
        .int()
        .min(COLDEST_C * 10)
        .max(HOTTEST_C * 10)
        .nullable(),
    )
    .safeParse(parsedJson(text));
  if (listed.success) return listed.data;
  context.addIssue({ code: "custom", message: "not a list of temperatures in tenths of a degree Celsius" });
  return z.NEVER;
});

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

/**
 * A year of recorded days, a row: highs and lows of its days from 1 January, 365 or 366 of them, in tenths of a degree Celsius; null where nobody
 * recorded. Its id is the year. Thirty years are thirty rows, so that a change of one day notes one row in the journal, and reading them costs nothing.
 */
export const weatherYearSchema = z
  .object({
    id: z.int().min(FIRST_WEATHER_YEAR).max(LAST_WEATHER_YEAR),
    highTenthsC: tenthsSchema,
    lowTenthsC: tenthsSchema,
  })
  .refine(({ id, highTenthsC, lowTenthsC }) => [highTenthsC, lowTenthsC].every(({ length }) => length === daysIn(id)), {
    error: "not as many days as the year has",
  })
  .refine(
    ({ highTenthsC, lowTenthsC }) =>
      highTenthsC.every((high, index) => {
        const low = lowTenthsC[index];
        return high === null || low === null ? high === low : low <= high;
      }),
    { error: "a day has a low above its high, or only one of the two" },
  );
export type WeatherYear = z.infer<typeof weatherYearSchema>;

/** The first day number of a year. */
const firstOf = (year: number): number => toDayNumber(parseDay(`${year}-01-01`));
const daysIn = (year: number): number => firstOf(year + 1) - firstOf(year);

/** The record of all years as one run of days, from the first recorded day to the last; null when no day is recorded. */
export function weatherOfYears(years: readonly WeatherYear[]): DailyWeather | null {
  const days = years.flatMap(({ id, highTenthsC, lowTenthsC }) =>
    highTenthsC.flatMap((high, index) => {
      const low = lowTenthsC[index];
      return high === null || low === null ? [] : [{ day: firstOf(id) + index, highC: high / 10, lowC: low / 10 }];
    }),
  );
  return weatherOfDays(days);
}

/** Days in any order, each once, as one run from the first to the last; null when there are none. */
export function weatherOfDays(
  days: readonly { readonly day: number; readonly highC: number; readonly lowC: number }[],
): DailyWeather | null {
  if (days.length === 0) return null;
  const firstDay = days.reduce((first, { day }) => Math.min(first, day), Number.POSITIVE_INFINITY);
  const lastDay = days.reduce((last, { day }) => Math.max(last, day), Number.NEGATIVE_INFINITY);
  const highC = new Float64Array(lastDay - firstDay + 1).fill(Number.NaN);
  const lowC = highC.slice();
  for (const { day, ...recorded } of days) {
    highC[day - firstDay] = recorded.highC;
    lowC[day - firstDay] = recorded.lowC;
  }
  return { firstDay, highC, lowC };
}

/** The recorded days of a run, in order. */
export const recordedDays = ({ firstDay, highC, lowC }: DailyWeather): WeatherDay[] =>
  Array.from(highC, (high, index) => ({ date: toDay(firstDay + index), highC: high, lowC: lowC[index] })).filter(
    ({ highC: high }) => !Number.isNaN(high),
  );

/** Recorded days as the rows that hold them, each year that has any; temperatures to a tenth. What `before` holds of such a year stays where no new day replaces it. */
export function weatherYearsWith(before: readonly WeatherYear[], days: readonly WeatherDay[]): WeatherYear[] {
  const years = new Map<number, { highTenthsC: (number | null)[]; lowTenthsC: (number | null)[] }>();
  for (const { date, highC, lowC } of days) {
    const year = yearOf(date);
    let row = years.get(year);
    if (!row) {
      const stood = before.find(({ id }) => id === year);
      const nobody = () => new Array<number | null>(daysIn(year)).fill(null);
      row = { highTenthsC: [...(stood?.highTenthsC ?? nobody())], lowTenthsC: [...(stood?.lowTenthsC ?? nobody())] };
      years.set(year, row);
    }
    const index = toDayNumber(date) - firstOf(year);
    row.highTenthsC[index] = tenths(highC);
    row.lowTenthsC[index] = tenths(lowC);
  }
  return [...years].map(([id, row]) => ({ id, ...row })).sort((a, b) => a.id - b.id);
}

/** A year as its row writes it; {@link weatherYearSchema} reads it. */
export const weatherRow = ({ id, highTenthsC, lowTenthsC }: WeatherYear) => ({
  id,
  highTenthsC: JSON.stringify(highTenthsC),
  lowTenthsC: JSON.stringify(lowTenthsC),
});

/** Rounded to a tenth of a degree, half up; never minus nought. */
const tenths = (celsius: number): number => Math.round(celsius * 10) + 0;
