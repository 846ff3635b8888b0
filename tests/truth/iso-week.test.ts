import { describe, expect, test } from "vitest";
import {
  addDays,
  isoWeekday,
  isoWeekOf,
  mondayOf,
  mondayOfIsoWeek,
  parseDay,
  toDay,
  toDayNumber,
} from "#lib/domain/day";
import { isoWeekSchema } from "#lib/domain/day-schema";

/**
 * The examples of ISO 8601 (the first two are the standard's own) as reproduced at https://en.wikipedia.org/wiki/ISO_week_date:
 * calendar day, week, weekday.
 */
const EXAMPLES = [
  ["2008-12-29", "2009-W01", 1],
  ["2010-01-03", "2009-W53", 7],
  ["1977-01-01", "1976-W53", 6],
  ["1977-01-02", "1976-W53", 7],
  ["1977-12-31", "1977-W52", 6],
  ["1978-01-01", "1977-W52", 7],
  ["1978-01-02", "1978-W01", 1],
  ["1978-12-31", "1978-W52", 7],
  ["1979-01-01", "1979-W01", 1],
  ["1979-12-30", "1979-W52", 7],
  ["1979-12-31", "1980-W01", 1],
  ["1980-01-01", "1980-W01", 2],
  ["1980-12-28", "1980-W52", 7],
  ["1980-12-29", "1981-W01", 1],
  ["1980-12-31", "1981-W01", 3],
  ["1981-01-01", "1981-W01", 4],
  ["1981-12-31", "1981-W53", 4],
  ["1982-01-01", "1981-W53", 5],
  ["1982-01-03", "1981-W53", 7],
] as const;

/** Years of 53 weeks, from the list of long years on the same page (offsets in the 400-year cycle). */
const LONG_YEARS = [1992, 1998, 2004, 2009, 2015, 2020, 2026, 2032, 2037, 2043, 2048, 2054, 2060];

describe("examples of the standard", () => {
  test.each(EXAMPLES)("%s lies in %s, weekday %i", (text, week, weekday) => {
    expect(isoWeekOf(parseDay(text))).toBe(week);
    expect(isoWeekday(parseDay(text))).toBe(weekday);
  });
});

test("of the years 1990 to 2060 only the long years have a week 53", () => {
  const years = Array.from({ length: 71 }, (_, index) => 1990 + index);
  expect(years.filter((year) => isoWeekSchema.safeParse(`${year}-W53`).success)).toEqual(LONG_YEARS);
});

test("2027-W53 is refused and 2026-W53 is not; week 00 is no week", () => {
  expect(isoWeekSchema.safeParse("2027-W53").success).toBe(false);
  expect(isoWeekSchema.safeParse("2026-W53").success).toBe(true);
  expect(isoWeekSchema.safeParse("2027-W00").success).toBe(false);
});

/**
 * A second method, with nothing but whole numbers: a week belongs to the year of its Thursday, and its number is one more than the whole
 * weeks of that year before that Thursday. 1 January 1990 was a Monday.
 */
test("every day from 1990 to 2060 agrees with the Thursday rule, and each Monday with its week", () => {
  const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = Array.from({ length: 71 }, (_, index) => 1990 + index).flatMap((year) =>
    Array.from({ length: isLeap(year) ? 366 : 365 }, (_, ordinal) => ({ year, ordinal })),
  );
  const first = toDayNumber(parseDay("1990-01-01"));
  const wrong: string[] = [];
  days.forEach((_, index) => {
    const weekday = (index % 7) + 1;
    const thursday = days[index - weekday + 4];
    const number = Math.floor(thursday.ordinal / 7) + 1;
    const week = `${thursday.year}-W${number < 10 ? "0" : ""}${number}`;
    const day = toDay(first + index);
    const agrees =
      isoWeekOf(day) === week &&
      isoWeekday(day) === weekday &&
      mondayOfIsoWeek(week) === mondayOf(day) &&
      addDays(mondayOf(day), weekday - 1) === day;
    if (!agrees) wrong.push(`${day} is ${isoWeekOf(day)}, not ${week} weekday ${weekday}`);
  });
  expect(days.length).toBe(25_933);
  expect(wrong).toEqual([]);
});
