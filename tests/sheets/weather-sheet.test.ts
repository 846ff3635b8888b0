import { describe, expect, test } from "vitest";
import { addDays, type Day, toDay } from "#lib/domain/day";
import { toFahrenheit } from "#lib/domain/weather";
import { readFarmSheets } from "#lib/sheets/read-farm-sheets";
import { readWeather } from "#lib/sheets/weather-sheet";
import { KNOWN } from "./known-farm";

describe("a file of daily weather", () => {
  test("[H6] a public daily summary in tenths of a degree: other columns do not matter, an empty temperature is a missing day", () => {
    const { weather, recordedDayCount, missingDayCount, problems } = readWeather(
      'STATION,DATE,PRCP,TMAX,TMIN\n"X1",2026-03-01,0,125,31\n"X1",2026-03-02,4,,20\n"X1",2026-03-03,0,98,-12\n',
      "tenths",
    );
    expect(problems).toEqual([]);
    expect([recordedDayCount, missingDayCount]).toEqual([2, 1]);
    expect(toDay(weather?.firstDay ?? 0)).toBe("2026-03-01");
    expect([...(weather?.highC ?? [])]).toEqual([12.5, Number.NaN, 9.8]);
    expect([...(weather?.lowC ?? [])]).toEqual([3.1, Number.NaN, -1.2]);
  });

  test("[H6] the unit in a heading goes before the unit asked for", () => {
    const sheet = readWeather("date,high (°F),low (°F)\n2026-07-04,86,68\n", "c");
    expect(sheet.unit).toBe("f");
    expect(sheet.weather?.highC[0]).toBeCloseTo(30, 12);
    expect(sheet.weather?.lowC[0]).toBeCloseTo(20, 12);
  });

  test("[H6] each slip is named by its line and the rest is read: a day twice, a low above its high, no number, no day, no such warmth", () => {
    const { problems, recordedDayCount } = readWeather(
      "date,high,low\n2026-04-01,15,4\n2026-04-01,16,5\n2026-04-02,3,9\n2026-04-03,warm,4\n2026-04-31,12,3\n2026-04-05,212,190\n2026-04-06,14,2\n",
      "c",
    );
    expect(problems.map(({ line }) => line)).toEqual([3, 4, 5, 6, 7]);
    expect(recordedDayCount).toBe(2);
    expect(problems.map(({ message }) => message).join("\n")).toMatch(
      /second time[\s\S]*above the high[\s\S]*not a temperature[\s\S]*not a day[\s\S]*beyond any place/,
    );
  });

  test("[H6] a day of a year before thermometers is a slip of the pen, named by its line", () => {
    const { problems, recordedDayCount } = readWeather("date,high,low\n1026-04-01,15,4\n2026-04-01,15,4\n", "c");
    expect(problems).toEqual([{ line: 2, message: "no thermometer has recorded a day of 1026: mend the year" }]);
    expect(recordedDayCount).toBe(1);
  });

  test("[H6] no day is lost behind one with a slip of the pen in its year", () => {
    const { weather, recordedDayCount, missingDayCount } = readWeather(
      "date,high,low\n1726-04-01,15,4\n2026-04-01,16,5\n2026-04-02,14,2\n",
      "c",
    );
    expect(recordedDayCount).toBe(3);
    expect(weather?.highC.at(-1)).toBe(14);
    // 300 years of 365 days, with a leap day in every fourth but 1800 and 1900.
    expect(missingDayCount).toBe(300 * 365 + 73 - 1);
  });

  test("[H6] a month written in °F in a file of °C is named from its first line and left out", () => {
    const rows = ["date,high,low"];
    let day = "2020-01-01" as Day;
    for (let index = 0; index < 4 * 365; index++, day = addDays(day, 1)) {
      const high = 14 - 12 * Math.cos((2 * Math.PI * index) / 365.25);
      const isOdd = day.startsWith("2022-05");
      rows.push([day, ...[high, high - 9].map((warmth) => (isOdd ? toFahrenheit(warmth) : warmth).toFixed(1))].join());
    }
    const { problems, missingDayCount } = readWeather(rows.join("\n"), "c");
    expect(problems).toHaveLength(1);
    expect(problems[0].line).toBe(rows.findIndex((row) => row.startsWith("2022-05-01")) + 1);
    expect(problems[0].message).toContain("in °F");
    expect(missingDayCount).toBe(31);
  });

  test("[H6] a file without the columns says which it wants", () => {
    const { weather, problems } = readWeather("day of year,temperature\n1,4\n", "c");
    expect(weather).toBeNull();
    expect(problems[0].message).toContain("DATE, TMAX and TMIN");
  });
});

test("brought in among the farm's sheets, a station's file is sent to where its unit is asked; the farm's own comes in", () => {
  const read = (name: string, text: string) => readFarmSheets([{ name, text }], KNOWN);
  for (const name of ["USC00440000.csv", "weather.csv"]) {
    const { problems, records } = read(name, "STATION,DATE,TMAX,TMIN\nX1,2026-03-01,125,31\n");
    expect(problems.map(({ message }) => message)).toEqual([expect.stringContaining("under Farm, Weather")]);
    expect(records.weather).toBeUndefined();
  }
  expect(read("days.csv", "date,high_c,low_c\n2026-03-01,12.5,3.1\n").records.weather).toEqual([
    { date: "2026-03-01", highC: 12.5, lowC: 3.1 },
  ]);
});
