import { describe, expect, test } from "vitest";
import { monthDayOf, toDay } from "#lib/domain/day";
import { frostDatesOf, frostDayAt } from "#lib/plan/chance/sample-season";
import { farm, monthDay } from "../small-farm";

/**
 * Published first frosts of autumn at 32 °F, as the dates that 10, 50 and 90 of 100 years have reached. Georgetown also publishes 33 and 67 %
 * dates, which the model never sees: they show how far it is off between the three.
 *
 * UDEL-FROST: "Frost dates, Georgetown research center" (data W. J. Moyer, ESSA-Weather, 1970), University of Delaware,
 * http://www.rec.udel.edu/misc/Frost%20dates.htm; published.
 * NCEI-ALB: U.S. Climate Normals 1991-2020, Albany International Airport NY (USW00014735), NOAA NCEI; read as quoted in a public code file,
 * not at NCEI; published, secondary.
 */
const STATIONS = [
  { name: "Georgetown DE (UDEL-FROST)", p10: "10-02", p50: "10-16", p90: "10-30" },
  { name: "Albany NY (NCEI-ALB)", p10: "10-03", p50: "10-15", p90: "11-01" },
] as const;

const datesOf = ({ p10, p50, p90 }: { p10: string; p50: string; p90: string }, year: number) => {
  const settings = farm();
  const frost = {
    ...settings.frost,
    firstAutumnP10: monthDay(p10),
    firstAutumnP50: monthDay(p50),
    firstAutumnP90: monthDay(p90),
  };
  return frostDatesOf({ ...settings, frost }, year);
};

describe("the first frost that is sampled", () => {
  test.each(STATIONS)("[R3] meets the published dates of $name to the day", (station) => {
    for (const year of [2027, 2028]) {
      const dates = datesOf(station, year);
      const at = (share: number) => monthDayOf(toDay(frostDayAt(dates, share)));
      expect([at(0.1), at(0.5), at(0.9)]).toEqual([station.p10, station.p50, station.p90]);
    }
  });

  test("between them it is at most a day off Georgetown's own 33 % (11 October) and 67 % (21 October) dates", () => {
    const dates = datesOf(STATIONS[0], 2027);
    const day = (text: string) => datesOf({ p10: text, p50: text, p90: text }, 2027).p50;
    expect(Math.abs(frostDayAt(dates, 0.33) - day("10-11"))).toBeLessThanOrEqual(1);
    expect(Math.abs(frostDayAt(dates, 0.67) - day("10-21"))).toBeLessThanOrEqual(1);
  });
});
