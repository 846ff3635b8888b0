import { format } from "date-fns";

/**
 * A civil date, "YYYY-MM-DD", with no time and no zone. Days compare as text: `"2027-06-09" < "2027-06-12"`.
 * This file is the only one in `lib` that touches `Date` or date-fns.
 */
export type Day = string & { readonly __day: unique symbol };

/** A day of any year, "MM-DD": a frost date, the day a kept bed starts to bloom. */
export type MonthDay = string & { readonly __monthDay: unique symbol };

/** An ISO 8601 week, "YYYY-Www"; weeks start on Monday and belong to the year of their Thursday. */
export type IsoWeek = string & { readonly __isoWeek: unique symbol };

/** A year of 365 days, as are those beside it: days of any year are counted in it. */
export const PLAIN_YEAR = 2026;

const MS_PER_DAY = 86_400_000;
const DAY_PATTERN = /^(\d{4})-(\d{2})-(\d{2})$/;

const pad = (whole: number, width: number) => String(whole).padStart(width, "0");

const DAYS_IN_MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : DAYS_IN_MONTH[month - 1];

/** Whether `text` is a day that the calendar has, as "YYYY-MM-DD". */
export const isCalendarDay = (text: string): boolean => {
  const [, year, month, day] = (DAY_PATTERN.exec(text) ?? []).map(Number);
  if (!year || !month || !day) return false;
  return month <= 12 && day <= daysInMonth(year, month);
};

/** The day written in `text`. Throws RangeError unless it is a calendar day. */
export function parseDay(text: string): Day {
  if (!isCalendarDay(text))
    throw new RangeError(`day must be a calendar day as YYYY-MM-DD, got ${JSON.stringify(text)}`);
  return text as Day;
}

/** Whole days from 1970-01-01 to `day`: the form in which `lib/plan` counts. Inverse of {@link toDay}. */
export function toDayNumber(day: Day): number {
  return Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / MS_PER_DAY;
}

/** The day that lies `dayNumber` whole days after 1970-01-01. Inverse of {@link toDayNumber}. */
export function toDay(dayNumber: number): Day {
  const date = new Date(dayNumber * MS_PER_DAY);
  return `${pad(date.getUTCFullYear(), 4)}-${pad(date.getUTCMonth() + 1, 2)}-${pad(date.getUTCDate(), 2)}` as Day;
}

/** The month of a day told as a number of days, 1 to 12. */
export const monthOfDayNumber = (dayNumber: number): number => new Date(dayNumber * MS_PER_DAY).getUTCMonth() + 1;

/** The day `dayCount` days after `day` (before it, when negative). */
export const addDays = (day: Day, dayCount: number): Day => toDay(toDayNumber(day) + dayCount);

/** Days from `earlier` to `later`; negative when they are the other way round. */
export const daysBetween = (earlier: Day, later: Day): number => toDayNumber(later) - toDayNumber(earlier);

/** The year a day lies in, by the calendar (not the ISO week year). */
export const yearOf = (day: Day): number => Number(day.slice(0, 4));

/** The day of the year that `day` is; 29 February, which most years lack, counts as 1 March. */
export const monthDayOf = (day: Day): MonthDay => day.slice(5).replace("02-29", "03-01") as MonthDay;

/** The day that `monthDay` falls on in `year`. */
export const dayInYear = (monthDay: MonthDay, year: number): Day => parseDay(`${pad(year, 4)}-${monthDay}`);

/** The same day of the year in `year`, by the rule of {@link monthDayOf}. */
export const sameDayIn = (day: Day, year: number): Day => dayInYear(monthDayOf(day), year);

/** Monday 1 … Sunday 7, as ISO 8601 counts. */
export const isoWeekday = (day: Day): number => weekdayOfDayNumber(toDayNumber(day));

/** Monday 1 … Sunday 7 of a day counted from 1970-01-01, which was a Thursday. */
export const weekdayOfDayNumber = (dayNumber: number): number => ((((dayNumber + 3) % 7) + 7) % 7) + 1;

/** The Monday on or before a day counted from 1970-01-01, counted the same way: the week's key inside a plan. */
export const mondayNumber = (dayNumber: number): number => dayNumber - weekdayOfDayNumber(dayNumber) + 1;

/** The ISO 8601 week of `day`: that of its Thursday, counted from the first Thursday of the Thursday's year. */
export function isoWeekOf(day: Day): IsoWeek {
  const thursday = mondayNumber(toDayNumber(day)) + 3;
  const year = yearOf(toDay(thursday));
  const week = Math.floor((thursday - toDayNumber(dayInYear("01-01" as MonthDay, year))) / 7) + 1;
  return `${pad(year, 4)}-W${pad(week, 2)}` as IsoWeek;
}

/** The Monday of the ISO week that `day` lies in. */
export const mondayOf = (day: Day): Day => toDay(mondayNumber(toDayNumber(day)));

/** The Monday of the ISO week written in `week`. */
export function mondayOfIsoWeek(week: string): Day {
  const year = Number(week.slice(0, 4));
  const fourthOfJanuary = toDayNumber(parseDay(`${pad(year, 4)}-01-04`));
  return toDay(mondayNumber(fourthOfJanuary) + (Number(week.slice(6)) - 1) * 7);
}

const toLocalDate = (day: Day): Date =>
  new Date(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10)), 12);

/** "12 Jun" */
export const inShort = (day: Day): string => format(toLocalDate(day), "d MMM");
/** "Sat 12 Jun" */
export const withWeekday = (day: Day): string => format(toLocalDate(day), "EEE d MMM");
/** "Saturday 12 June 2027" */
export const inFull = (day: Day): string => format(toLocalDate(day), "EEEE d MMMM yyyy");
/** "Saturday the 12th of June", for words that are read aloud */
export const aloud = (day: Day): string => format(toLocalDate(day), "EEEE 'the' do 'of' MMMM");
/** "Jun" */
export const monthInShort = (day: Day): string => format(toLocalDate(day), "MMM");
/** "June" */
export const monthInWords = (day: Day): string => format(toLocalDate(day), "MMMM");
/** "June 2027" */
export const monthAndYear = (day: Day): string => format(toLocalDate(day), "MMMM yyyy");
/** "Week of 7 June" */
export const weekInWords = (monday: Day): string => `Week of ${format(toLocalDate(monday), "d MMMM")}`;
/** "18 Oct", for a day of any year. */
export const monthDayInShort = (monthDay: MonthDay): string => inShort(dayInYear(monthDay, PLAIN_YEAR));

/** The names of the months in full, January first. */
export const MONTHS: readonly string[] = Array.from({ length: 12 }, (_, index) =>
  monthInWords(parseDay(`2027-${pad(index + 1, 2)}-01`)),
);

/** The month of a day in its year, 1 to 12. */
export const monthNumber = (day: Day): number => Number(day.slice(5, 7));

/** The names of the weekdays, Monday first, as `isoWeekday` counts them (index 0 is Monday). */
export const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
