import { describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import { demoWeather } from "#demo/demo-weather";
import { isoWeekday, parseDay, toDayNumber } from "#lib/domain/day";
import { recordedDays } from "#lib/domain/records/weather-day";
import { withShortClients } from "#lib/domain/short-clients";
import { frostRecord } from "#lib/plan/learning/frost-record";
import { expectedBookings } from "#lib/plan/winter/expected-bookings";
import { plantingDays, plantsOf } from "./season-facts";

describe("a farm that a grower believes", () => {
  const snapshot = demoSnapshot();

  test("every bed is 50 by 4 feet", () => {
    for (const bed of snapshot.beds) {
      expect(bed.lengthMetres).toBeCloseTo(50 * 0.3048, 6);
      expect(bed.widthMetres).toBeCloseTo(4 * 0.3048, 6);
    }
  });

  // Common practice, from memory: six inches each way are four plants a square foot, a tulip bed holds ten bulbs a square foot and more.
  test.each([
    ["Ranunculus", "Tunnel 1", 4],
    ["Anemone", "Tunnel 3", 4],
    ["Larkspur", "South Slope 4", 4],
    ["Tulip", "South Slope 1", 10],
    ["Tulip", "South Slope 2", 10],
  ])("%s stands in %s as close as in the field, %i plants a square foot", (crop, bed, plantsPerSquareFoot) => {
    expect(plantsOf(snapshot, crop, bed) / (50 * 4)).toBeGreaterThanOrEqual(plantsPerSquareFoot * 0.99);
  });

  test("what blooms once is sown or planted again: sunflowers five times, two weeks apart; gladioli, snapdragons and zinnias three times and more", () => {
    const days = plantingDays(snapshot, "Sunflower");
    expect(days.slice(1).map((day, index) => day - days[index])).toEqual([14, 14, 14, 14]);
    for (const crop of ["Gladiolus", "Snapdragon", "Zinnia"])
      expect(plantingDays(snapshot, crop).length, crop).toBeGreaterThanOrEqual(3);
  });

  test("events lie on Fridays, Saturdays and Sundays, most of them on Saturdays", () => {
    const weekdays = snapshot.bookings.map(({ eventOn }) => isoWeekday(eventOn));
    expect(new Set(weekdays)).toEqual(new Set([5, 6, 7]));
    const counts = [5, 6, 7].map((wanted) => weekdays.filter((weekday) => weekday === wanted).length);
    for (const count of counts) expect(count).toBeGreaterThanOrEqual(6);
    expect(counts[1]).toBeGreaterThan(weekdays.length / 2);
  });

  test("no two clients begin with the same word, so that a helper sees each by a short name of its own", () => {
    const short = withShortClients(snapshot.bookings).map(({ client }) => client);
    expect(new Set(short).size).toBe(short.length);
    for (const name of short) expect(name).toMatch(/^[A-Z][a-z]+$/);
  });

  test("it has the climate of a station and ten years of weather behind it, of which none is missing a day", () => {
    expect(snapshot.farm.climate?.station).toBe("Asheville, North Carolina");
    const years = snapshot.weather ? recordedDays(snapshot.weather).map(({ date }) => date.slice(0, 4)) : [];
    expect(new Set(years).size).toBe(10);
    expect(years.length).toBe(10 * 365 + 2);
    expect([years[0], years.at(-1)]).toEqual(["2017", "2026"]);
  });

  test("ten whole years stand behind it on any day on which it may be loaded", () => {
    for (const [season, today] of [
      [2027, "2026-11-25"],
      [2027, "2027-01-01"],
      [2027, "2027-06-10"],
      [2028, "2027-12-31"],
    ] as const) {
      const days = demoWeather(season, parseDay(today)).map(({ date }) => date);
      expect(new Set(days).size).toBe(days.length);
      const years = [...new Set(days.map((date) => date.slice(0, 4)))];
      const isWhole = (year: string) => days.filter((date) => date.startsWith(year)).length >= 365;
      expect(years.filter(isWhole).length).toBe(10);
    }
  });

  test("the frosts of those years lie about the farm's own dates: the median autumn frost within a week of it, one early and one late", () => {
    const record = snapshot.weather && frostRecord(snapshot.weather);
    expect(record?.leftOut).toEqual([]);
    const dayOf = (monthDay = "01-01") => toDayNumber(parseDay(`2027-${monthDay}`));
    const { firstAutumnP10, firstAutumnP50, firstAutumnP90 } = snapshot.farm.frost;
    expect(Math.abs(dayOf(record?.dates?.firstAutumnP50) - dayOf(firstAutumnP50))).toBeLessThanOrEqual(7);
    const autumns = record?.years.map(({ firstAutumn }) => dayOf(firstAutumn?.slice(5) ?? "12-31")) ?? [];
    expect(Math.min(...autumns)).toBeLessThan(dayOf(firstAutumnP10) + 7);
    expect(Math.max(...autumns)).toBeGreaterThan(dayOf(firstAutumnP90) - 7);
  });

  test("it expects four free Saturdays to be booked still, and there are more than that", () => {
    expect(expectedBookings(snapshot, 2027, parseDay("2026-11-26")).length).toBe(4);
    const more = { ...snapshot.farm, winter: { ...snapshot.farm.winter, expectedSaturdayCount: 50 } };
    expect(expectedBookings({ ...snapshot, farm: more }, 2027, parseDay("2026-11-26")).length).toBeGreaterThan(4);
  });
});
