import { type Day, inFull, isoWeekday, MONTHS, WEEKDAYS } from "./day";
import { daySchema } from "./day-schema";
import { inQuotes } from "./in-quotes";
import type { TextReading } from "./read-number";
import type { Writing } from "./writing";

/**
 * The day that a text says, as "YYYY-MM-DD", or the text as it stands where it is no way to write a day that is known here: the schema of
 * a day then says what to write.
 *
 * | written | read as |
 * | --- | --- |
 * | `2027-6-5`, `2027/06/05`, `2027-06-05 00:00:00` | 5 June 2027 |
 * | `Sat 5 June 2027`, `June 5th, 2027`, `5-Jun-27` | 5 June 2027; refused where the weekday is another |
 * | `6/25/2027`, `25/6/27`, `25.06.2027` | 25 June 2027 |
 * | `05.06.2027` | 5 June 2027: with points the day comes first |
 * | `6/5/2027` | as the farm writes its dates; refused with both days where it has not said |
 *
 * A year of two digits is one of this century.
 */
export function readDay(text: string, { dateOrder = "ask" }: Writing = {}): TextReading<string> {
  const bare = text.trim().replace(/[T ]00:00(:00(\.0+)?)?Z?$/, "");
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(bare);
  if (yearFirst) return right(yearFirst[1], yearFirst[2], yearFirst[3]);
  const numbers = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})$/.exec(bare);
  if (numbers) return fromNumbers(text, numbers, dateOrder);
  const words = inWords(bare);
  return words ? checkedWeekday(text, words) : { ok: true, value: text };
}

/** The day of any year that a text says, as "MM-DD": "18 Oct" and "October 18" too. Else the text as it stands. */
export function readMonthDay(text: string): TextReading<string> {
  const words = inWords(`${text.trim()} 2027`);
  return { ok: true, value: words ? words.day.slice(5) : text };
}

const pad = (digits: string | number): string => String(digits).padStart(2, "0");
const inCentury = (year: string): string => (year.length === 2 ? `20${year}` : year);
const dayOf = (year: string, month: string | number, day: string): string =>
  `${inCentury(year)}-${pad(month)}-${pad(day)}`;
const right = (year: string, month: string, day: string): TextReading<string> => ({
  ok: true,
  value: dayOf(year, month, day),
});

function fromNumbers(
  text: string,
  [, first, sign, second, year]: readonly string[],
  order: NonNullable<Writing["dateOrder"]>,
): TextReading<string> {
  if (Number(first) > 12) return right(year, second, first);
  if (Number(second) > 12) return right(year, first, second);
  if (first === second || order === "month first") return right(year, first, second);
  if (sign === "." || order === "day first") return right(year, second, first);
  const both = [dayOf(year, first, second), dayOf(year, second, first)];
  if (both.some((day) => !daySchema.safeParse(day).success)) return { ok: true, value: text };
  return {
    ok: false,
    message: `${inQuotes(text)} may be ${inFull(both[0] as Day)} or ${inFull(both[1] as Day)}: write ${both[0]} or ${both[1]}, or say on the Farm screen how dates are written`,
  };
}

type InWords = { readonly day: string; readonly weekday: string | undefined };

/** "Sat 12 June 2027", "June 12th, 2027", "12-Jun-27". */
function inWords(text: string): InWords | null {
  const plain = text.toLowerCase().replace(/[\s,-]+/g, " ");
  const found =
    /^(?:([a-z]+)\.? )?(\d{1,2})(?:st|nd|rd|th)?\.? (?:of )?([a-z]+)\.? (\d{4}|\d{2})$/.exec(plain) ??
    reordered(/^(?:([a-z]+)\.? )?([a-z]+)\.? (\d{1,2})(?:st|nd|rd|th)? (\d{4}|\d{2})$/.exec(plain));
  if (!found) return null;
  const [, weekday, day, monthWord, year] = found;
  const month = MONTHS.findIndex((name) => monthWord.length >= 3 && name.toLowerCase().startsWith(monthWord)) + 1;
  return month > 0 ? { day: dayOf(year, month, day), weekday } : null;
}

const reordered = (found: RegExpExecArray | null): readonly string[] | null =>
  found && [found[0], found[1], found[3], found[2], found[4]];

function checkedWeekday(text: string, { day, weekday }: InWords): TextReading<string> {
  const parsed = daySchema.safeParse(day);
  if (!parsed.success || weekday === undefined) return { ok: true, value: day };
  const name = WEEKDAYS[isoWeekday(parsed.data) - 1];
  if (name.toLowerCase() === weekday.slice(0, 3)) return { ok: true, value: day };
  return {
    ok: false,
    message: `${inQuotes(text)} is no such weekday: it is ${inFull(parsed.data)}; write the day that is meant`,
  };
}
