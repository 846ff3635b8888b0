import { parseDay, toDay, toDayNumber } from "#lib/domain/day";

/** The day that a workbook counts from: 1900 by default, 1904 where it says so. */
export type DateSystem = 1900 | 1904;

/** The last day that a serial number can say: 31 December 9999. */
const LAST_DAY_NUMBER = toDayNumber(parseDay("9999-12-31"));

/**
 * The day, and the time of day if there is any, that a cell's serial number says: "2027-06-12", "2027-06-12 13:30". The 1900 system takes
 * 1900 for a leap year: 60 is 29 February 1900, which no calendar has and the schema of a day refuses. Null outside of the system.
 *
 * Source: ECMA-376 Part 1, 18.17.4 (date representation), https://ooxml.info/docs/18/18.17/18.17.4/
 */
export function serialDay(serial: number, system: DateSystem): string | null {
  // A minute is the finest that anybody writes; a part of a second is floating point.
  const minutes = Math.round(serial * MINUTES_PER_DAY);
  const whole = Math.floor(minutes / MINUTES_PER_DAY);
  const minute = minutes - whole * MINUTES_PER_DAY;
  const day = dayOf(whole, system);
  if (day === null || minute === 0) return day;
  const two = (count: number) => String(count).padStart(2, "0");
  return `${day} ${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

const MINUTES_PER_DAY = 1440;
const DAY_0_OF_1904 = toDayNumber(parseDay("1904-01-01"));
/** From 1 March 1900 on, the day that never was is counted too. */
const DAY_0_OF_1900 = toDayNumber(parseDay("1899-12-30"));
const NEVER = 60;

function dayOf(whole: number, system: DateSystem): string | null {
  if (whole < (system === 1904 ? 0 : 1)) return null;
  if (system === 1900 && whole === NEVER) return "1900-02-29";
  const dayNumber = system === 1904 ? DAY_0_OF_1904 + whole : DAY_0_OF_1900 + whole + (whole < NEVER ? 1 : 0);
  return dayNumber > LAST_DAY_NUMBER ? null : toDay(dayNumber);
}

/**
 * The serial number of a day in the 1900 system, the inverse of {@link serialDay}; null before March 1900, where the programs do not agree. Its text
 * is a day as our sheets write it.
 */
export function serialOf(day: string): number | null {
  const serial = toDayNumber(parseDay(day)) - DAY_0_OF_1900;
  return serial > NEVER ? serial : null;
}
