import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  type Day,
  dayInYear,
  daysBetween,
  inFull,
  inShort,
  isoWeekday,
  isoWeekOf,
  mondayNumber,
  mondayOf,
  mondayOfIsoWeek,
  monthAndYear,
  monthDayOf,
  monthInShort,
  parseDay,
  sameDayIn,
  toDay,
  toDayNumber,
  WEEKDAYS,
  weekInWords,
  withWeekday,
  yearOf,
} from "#lib/domain/day";
import { daySchema, isoWeekSchema, monthDaySchema } from "#lib/domain/day-schema";

const SEED = 20270101;
const day = (text: string): Day => parseDay(text);
const dayNumbers = fc.integer({ min: toDayNumber(day("1900-01-01")), max: toDayNumber(day("2400-12-31")) });
const forAllDays = (claim: (dayNumber: number) => void) =>
  fc.assert(fc.property(dayNumbers, claim), { seed: SEED, numRuns: 500 });

describe("what is a day", () => {
  test.each(["2027-06-12", "2028-02-29", "2000-02-29", "2027-12-31"])("%s is one", (text) => {
    expect(daySchema.parse(text)).toBe(text);
  });

  test.each([
    "2027-02-29",
    "1900-02-29",
    "2027-13-01",
    "2027-00-10",
    "2027-06-31",
    "2027-6-1",
    "12.06.2027",
    "2027-06-12T00:00",
  ])("%j is none, and the words say how to write one", (text) => {
    const parsed = daySchema.safeParse(text);
    expect(parsed.error?.issues[0].message).toBe("not a calendar day: write it as YYYY-MM-DD, for example 2027-06-12");
    expect(() => parseDay(text)).toThrow(RangeError);
  });

  test("a day that nobody chose is asked for", () => {
    expect(daySchema.safeParse(" ").error?.issues.map(({ message }) => message)).toEqual(["choose a day"]);
  });

  test("spaces round a typed day do not matter", () => {
    expect(daySchema.parse(" 2027-06-12 ")).toBe("2027-06-12");
  });

  test("a day of the year is one that every year has", () => {
    expect(monthDaySchema.parse("10-18")).toBe("10-18");
    expect(monthDaySchema.safeParse("02-29").success).toBe(false);
    expect(monthDaySchema.safeParse("1-5").success).toBe(false);
  });
});

describe("counting days", () => {
  test("1970-01-01 is day 0, the day before it day -1, and 2027-06-12 is day 20,981", () => {
    expect(toDayNumber(day("1970-01-01"))).toBe(0);
    expect(toDayNumber(day("1969-12-31"))).toBe(-1);
    /** 57 years of 365 days, 14 leap days from 1972 to 2024, 31 + 28 + 31 + 30 + 31 + 11 days of 2027. */
    expect(toDayNumber(day("2027-06-12"))).toBe(57 * 365 + 14 + 162);
  });

  test("a week over the night the clocks change is still 7 days", () => {
    for (const night of ["2027-03-14", "2027-11-07", "2027-04-04", "2027-09-26"]) {
      expect(daysBetween(addDays(day(night), -3), addDays(day(night), 4))).toBe(7);
      expect(addDays(day(night), 1) > day(night)).toBe(true);
    }
  });

  test("the 28th of February is followed by the 29th in 2028 and by March in 2027", () => {
    expect(addDays(day("2028-02-28"), 1)).toBe("2028-02-29");
    expect(addDays(day("2027-02-28"), 1)).toBe("2027-03-01");
  });

  test("day and day number are each other's inverse, and days stand in the order of their numbers", () => {
    forAllDays((number) => {
      expect(toDayNumber(toDay(number))).toBe(number);
      expect(toDay(number) < toDay(number + 1)).toBe(true);
      expect(daysBetween(toDay(number), addDays(toDay(number), 40))).toBe(40);
    });
  });

  test("a year slipped in as 0027 is refused, or counted as what it says: never as 1927", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (year) => {
        const parsed = daySchema.safeParse(`${String(year).padStart(4, "0")}-06-12`);
        if (parsed.success) expect(toDay(toDayNumber(parsed.data))).toBe(parsed.data);
      }),
      { seed: SEED, numRuns: 300, examples: [[27], [99], [100]] },
    );
  });

  test("a day is its month and day in its year", () => {
    expect(dayInYear(monthDaySchema.parse("10-18"), 2031)).toBe("2031-10-18");
    forAllDays((number) => {
      const here = toDay(number);
      expect(dayInYear(monthDayOf(here), yearOf(here))).toBe(here);
    });
  });
});

describe("weeks", () => {
  test("12 June 2027 is a Saturday of week 23, whose Monday is the 7th", () => {
    expect(isoWeekday(day("2027-06-12"))).toBe(6);
    expect(WEEKDAYS[isoWeekday(day("2027-06-12")) - 1]).toBe("Sat");
    expect(isoWeekOf(day("2027-06-12"))).toBe("2027-W23");
    expect(mondayOf(day("2027-06-12"))).toBe("2027-06-07");
  });

  /** Source: ISO 8601 week dates, https://en.wikipedia.org/wiki/ISO_week_date, the table of days near the turn of the year. */
  test.each([
    ["1977-01-01", "1976-W53"],
    ["1977-01-02", "1976-W53"],
    ["1977-12-31", "1977-W52"],
    ["1978-01-01", "1977-W52"],
    ["1978-01-02", "1978-W01"],
    ["1978-12-31", "1978-W52"],
    ["1979-12-30", "1979-W52"],
    ["1979-12-31", "1980-W01"],
    ["1980-12-28", "1980-W52"],
    ["1980-12-29", "1981-W01"],
    ["1981-12-31", "1981-W53"],
    ["1982-01-03", "1981-W53"],
  ])("%s lies in %s", (text, week) => {
    expect(isoWeekOf(day(text))).toBe(week);
  });

  test("the seven days of a week share it and its Monday, and the week is found again from its name", () => {
    forAllDays((number) => {
      const monday = toDay(mondayNumber(number));
      const week = isoWeekOf(toDay(number));
      expect(isoWeekday(monday)).toBe(1);
      expect(number - toDayNumber(monday)).toBe(isoWeekday(toDay(number)) - 1);
      for (let later = 0; later < 7; later++) expect(isoWeekOf(addDays(monday, later))).toBe(week);
      expect(mondayOfIsoWeek(week)).toBe(monday);
      expect(isoWeekSchema.parse(week)).toBe(week);
    });
  });

  test("week 53 exists in 2026, not in 2027", () => {
    expect(isoWeekSchema.safeParse("2026-W53").success).toBe(true);
    expect(isoWeekSchema.safeParse("2027-W53").error?.issues[0].message).toBe("this year has no such week");
    expect(isoWeekSchema.safeParse("2027-W00").success).toBe(false);
    expect(isoWeekSchema.safeParse("0000-W01").success).toBe(false);
  });

  test.each(["abc", "", "2027-24", "2027-W2", "W24"])("%j is refused as a week, and nothing is thrown", (text) => {
    const parsed = isoWeekSchema.safeParse(text);
    expect(parsed.error?.issues[0].message).toBe("not an ISO week: write it as YYYY-Www, for example 2027-W24");
  });
});

test("days in words name the day that is meant, whatever the time zone", () => {
  const saturday = day("2027-06-12");
  expect(inShort(saturday)).toBe("12 Jun");
  expect(withWeekday(saturday)).toBe("Sat 12 Jun");
  expect(inFull(saturday)).toBe("Saturday 12 June 2027");
  expect(weekInWords(mondayOf(saturday))).toBe("Week of 7 June");
  forAllDays((number) => {
    const here = toDay(number);
    expect(withWeekday(here).slice(0, 3)).toBe(WEEKDAYS[isoWeekday(here) - 1]);
    expect(inFull(here).endsWith(String(yearOf(here)))).toBe(true);
    expect(Number.parseInt(inShort(here), 10)).toBe(Number(here.slice(8)));
  });
});

test("what is reckoned from the last day that can be typed is a day too", () => {
  expect(daySchema.safeParse("9000-12-31").success).toBe(true);
  expect(daySchema.safeParse("9001-01-01").success).toBe(false);
  expect(parseDay(addDays(parseDay("9000-12-31"), 400))).toBe("9002-02-04");
  expect(dayInYear(monthDaySchema.parse("10-18"), 9001)).toBe("9001-10-18");
});

test("29 February, which most years lack, is 1 March as a day of the year and in any other year", () => {
  expect(monthDayOf(day("2028-02-29"))).toBe("03-01");
  expect(sameDayIn(day("2028-02-29"), 2031)).toBe("2031-03-01");
  expect(sameDayIn(day("2028-02-29"), 2032)).toBe("2032-03-01");
  expect(sameDayIn(day("2028-02-28"), 2031)).toBe("2031-02-28");
});

test("months are named short and with their year", () => {
  expect(monthInShort(day("2027-06-12"))).toBe("Jun");
  expect(monthAndYear(day("2027-06-12"))).toBe("June 2027");
});
