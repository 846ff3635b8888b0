import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDay, toDay, toDayNumber } from "#lib/domain/day";
import {
  recordedDays,
  type WeatherDay,
  weatherOfDays,
  weatherOfYears,
  weatherYearSchema,
  weatherYearsWith,
} from "#lib/domain/records/weather-day";
import { day } from "../small-farm";

const SEED = 20_270_614;

const days = fc
  .uniqueArray(
    fc.record({
      at: fc.integer({ min: toDayNumber(day("1999-12-20")), max: toDayNumber(day("2004-03-05")) }),
      low: fc.integer({ min: -300, max: 200 }),
      above: fc.nat(200),
    }),
    { maxLength: 40, selector: ({ at }) => at },
  )
  .map((rows): WeatherDay[] =>
    rows.map(({ at, low, above }) => ({ date: toDay(at), lowC: low / 10, highC: (low + above) / 10 })),
  );

const byDate = (rows: readonly WeatherDay[]) => [...rows].sort((a, b) => (a.date < b.date ? -1 : 1));
/** What stands in the table of a year, and comes out of it. */
const kept = (rows: ReturnType<typeof weatherYearsWith>) =>
  rows.map(({ id, highTenthsC, lowTenthsC }) =>
    weatherYearSchema.parse({
      id,
      highTenthsC: JSON.stringify(highTenthsC),
      lowTenthsC: JSON.stringify(lowTenthsC),
    }),
  );

describe("recorded days, a row a year", () => {
  test("a leap year has a place for 29 February, and two days lie where they belong", () => {
    const [row] = weatherYearsWith(
      [],
      [
        { date: day("2000-02-29"), highC: 8.04, lowC: -1.25 },
        { date: day("2000-12-31"), highC: 1, lowC: 0 },
      ],
    );
    expect([row.id, row.highTenthsC.length]).toEqual([2000, 366]);
    expect([row.highTenthsC[59], row.lowTenthsC[59], row.highTenthsC[365]]).toEqual([80, -12, 10]);
    expect(row.highTenthsC.filter((high) => high !== null)).toHaveLength(2);
  });

  test("any days come out as they went in, whatever their order, and nothing else does", () => {
    fc.assert(
      fc.property(days, (rows) => {
        const weather = weatherOfYears(kept(weatherYearsWith([], rows)));
        expect(weather ? recordedDays(weather) : []).toEqual(byDate(rows));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test("taken in two goes, the later days replace those of the same date and leave the others", () => {
    fc.assert(
      fc.property(days, days, (first, second) => {
        const stood = kept(weatherYearsWith([], first));
        const touched = weatherYearsWith(stood, second);
        const after = [...stood.filter(({ id }) => touched.every((row) => row.id !== id)), ...kept(touched)];
        const expected = new Map([...first, ...second].map((row) => [row.date, row]));
        const weather = weatherOfYears(after);
        expect(weather ? recordedDays(weather) : []).toEqual(byDate([...expected.values()]));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  test("a run of days holds nothing between two that were recorded, and says so with NaN", () => {
    const first = toDayNumber(parseDay("2001-05-01"));
    const weather = weatherOfDays([
      { day: first + 2, highC: 20, lowC: 10 },
      { day: first, highC: 18, lowC: 8 },
    ]);
    expect(weather?.firstDay).toBe(first);
    expect([...(weather?.highC ?? [])]).toEqual([18, Number.NaN, 20]);
    expect(weatherOfDays([])).toBeNull();
  });

  test("a year that is too short, a low above its high, half a day and what is no list are refused", () => {
    const year = (change: (row: { highTenthsC: (number | null)[]; lowTenthsC: (number | null)[] }) => void) => {
      const row = {
        highTenthsC: new Array<number | null>(365).fill(null),
        lowTenthsC: new Array<number | null>(365).fill(null),
      };
      change(row);
      const texts = { highTenthsC: JSON.stringify(row.highTenthsC), lowTenthsC: JSON.stringify(row.lowTenthsC) };
      return weatherYearSchema.safeParse({ id: 2001, ...texts }).success;
    };
    expect(year(() => {})).toBe(true);
    expect(year(({ highTenthsC }) => highTenthsC.pop())).toBe(false);
    expect(year(({ highTenthsC }) => highTenthsC.fill(10, 0, 1))).toBe(false);
    expect(year((row) => [row.highTenthsC.fill(10, 0, 1), row.lowTenthsC.fill(11, 0, 1)])).toBe(false);
    expect(weatherYearSchema.safeParse({ id: 2001, highTenthsC: "warm", lowTenthsC: "[]" }).success).toBe(false);
  });
});
