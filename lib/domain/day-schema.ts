import { z } from "zod";
import { type Day, type IsoWeek, isCalendarDay, isoWeekOf, type MonthDay, mondayOfIsoWeek } from "./day";

/** Days as they come from outside, apart from the days themselves: a phone that reads a list in the field needs no parser for it. */

/** Days from outside lie between these years; any other is a slip of the pen. What is reckoned from them may lie a little beyond. */
const FIRST_YEAR = 1000;
const LAST_YEAR = 9000;

function isDayInReach(text: string): boolean {
  const year = Number(text.slice(0, 4));
  return isCalendarDay(text) && year >= FIRST_YEAR && year <= LAST_YEAR;
}

function isWeekInReach(text: string): boolean {
  const year = Number(text.slice(0, 4));
  return year > FIRST_YEAR && year < LAST_YEAR && isoWeekOf(mondayOfIsoWeek(text)) === text;
}

/** Parses "YYYY-MM-DD" and refuses days that no calendar has ("2027-02-29"). */
export const daySchema = z
  .string()
  .trim()
  .min(1, { error: "choose a day", abort: true })
  .refine(isDayInReach, "not a calendar day: write it as YYYY-MM-DD, for example 2027-06-12")
  .transform((text) => text as Day);

/** Parses "MM-DD"; "02-29" is refused, since most years do not have it. */
export const monthDaySchema = z
  .string()
  .trim()
  .refine((text) => isCalendarDay(`2027-${text}`), "not a day of the year: write it as MM-DD, for example 10-18")
  .transform((text) => text as MonthDay);

/** The Monday of an ISO week, or a problem in words: "2027-W53" is not a week, since 2027 has 52. */
export const isoWeekSchema = z
  .string()
  .regex(/^\d{4}-W\d{2}$/, { error: "not an ISO week: write it as YYYY-Www, for example 2027-W24", abort: true })
  .refine(isWeekInReach, "this year has no such week")
  .transform((text) => text as IsoWeek);
