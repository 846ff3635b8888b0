import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import { type Day, dayInYear, monthDayOf, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import { frostDatesSchema } from "#lib/domain/records/farm-settings";
import type { DailyWeather } from "#lib/domain/weather";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { frostRecord } from "#lib/plan/learning/frost-record";

/** jStat 1.9.6 (MIT licence, https://github.com/jstat/jstat), an independent library of statistics; it has no types of its own. */
type Reference = { quantiles: (data: number[], shares: number[], alphap: number, betap: number) => number[] };
const { jStat }: { jStat: Reference } = createRequire(import.meta.url)("jstat");

/** Weather of whole years, frost-free but for the winter and the days named; `without` days are missing. */
function weatherOf(
  first: number,
  frosts: readonly (readonly [string, string])[],
  without: readonly string[] = [],
): DailyWeather {
  const firstDay = toDayNumber(parseDay(`${first}-01-01`));
  const lastDay = toDayNumber(parseDay(`${first + frosts.length - 1}-12-31`));
  const lowC = Float64Array.from({ length: lastDay - firstDay + 1 }, (_, index) => {
    const day = toDay(firstDay + index);
    if (without.includes(day)) return Number.NaN;
    const [lastSpring, firstAutumn] = frosts[Number(day.slice(0, 4)) - first];
    return day.slice(5) <= lastSpring || day.slice(5) >= firstAutumn ? -1 : 6;
  });
  return { firstDay, lowC, highC: lowC.map((low) => low + 9) };
}

describe("frost dates from a record of daily lows", () => {
  test("[H7] eleven years whose first frosts are 5 to 15 October: one in ten by the 6th, half by the 10th, nine in ten by the 14th", () => {
    const frosts = Array.from(
      { length: 11 },
      (_, year) => [`04-${20 + (year % 3)}`, `10-${String(5 + year).padStart(2, "0")}`] as const,
    );
    const { years, dates } = frostRecord(weatherOf(2010, frosts));
    expect(years[0]).toEqual({ year: 2010, lastSpring: "2010-04-20", firstAutumn: "2010-10-05" });
    expect([dates?.firstAutumnP10, dates?.firstAutumnP50, dates?.firstAutumnP90]).toEqual(["10-06", "10-10", "10-14"]);
    expect([dates?.lastSpringP10, dates?.lastSpringP50, dates?.lastSpringP90]).toEqual(["04-22", "04-21", "04-20"]);
  });

  test("[H7] exactly 0 °C is frost; nine years give no dates; a year that lacks six autumn days is left out and counted", () => {
    const frosts = Array.from({ length: 9 }, () => ["04-20", "10-18"] as const);
    expect(frostRecord(weatherOf(2010, frosts)).dates).toBeNull();
    const gaps = ["01", "02", "03", "04", "05", "06"].map((day) => `2012-10-${day}`);
    const { years, leftOut } = frostRecord(weatherOf(2010, frosts, gaps));
    expect(years.map(({ year }) => year)).not.toContain(2012);
    expect(leftOut).toEqual([{ year: 2012, missingDayCount: 6 }]);
    const still = weatherOf(2010, frosts);
    still.lowC[toDayNumber("2010-09-01" as Day) - still.firstDay] = 0;
    expect(frostRecord(still).years[0].firstAutumn).toBe("2010-09-01");
  });

  test("[H7] a year without an autumn frost counts as the last of the year, and the dates keep their order", () => {
    const frosts = Array.from({ length: 12 }, (_, year) => ["03-15", year < 2 ? "13-01" : "11-20"] as const);
    const { years, dates } = frostRecord(weatherOf(2000, frosts));
    expect(years[0].firstAutumn).toBeNull();
    expect(dates?.firstAutumnP90).toBe("12-27");
    expect(frostDatesSchema.safeParse(dates).success).toBe(true);
  });

  test("[H7] on 40 invented records the dates are those of another library's quantiles, rounded to a day (seed 6)", () => {
    const random = seededRandom(6);
    for (let round = 0; round < 40; round++) {
      const frosts = Array.from({ length: wholeBetween(random, 10, 30) }, () => {
        const spring = toDay(toDayNumber("2027-04-20" as Day) + wholeBetween(random, -25, 25));
        const autumn = toDay(toDayNumber("2027-10-18" as Day) + wholeBetween(random, -20, 20));
        return [spring.slice(5), autumn.slice(5)] as const;
      });
      const { dates } = frostRecord(weatherOf(1990, frosts));
      const places = frosts.map(([, autumn]) => toDayNumber(parseDay(`2027-${autumn}`)));
      // alphap = betap = 1 is definition 7 of Hyndman and Fan.
      const theirs = jStat
        .quantiles(places, [0.1, 0.5, 0.9], 1, 1)
        .map((place) => monthDayOf(toDay(Math.round(place))));
      expect([dates?.firstAutumnP10, dates?.firstAutumnP50, dates?.firstAutumnP90]).toEqual(theirs);
      expect(dayInYear(dates?.lastSpringP50 ?? ("01-01" as never), 2027) < "2027-07-15").toBe(true);
    }
  });
});
