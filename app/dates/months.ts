import { monthAndYear } from "#lib/domain/day";
import type { OpenDate } from "#lib/plan/road/open-dates";

/** Days under the month and year they lie in ("June 2027"), in order. */
export function monthsOf(dates: readonly OpenDate[]): { month: string; dates: OpenDate[] }[] {
  const months: { month: string; dates: OpenDate[] }[] = [];
  for (const date of dates) {
    const month = monthAndYear(date.day);
    const last = months.at(-1);
    if (last?.month === month) last.dates.push(date);
    else months.push({ month, dates: [date] });
  }
  return months;
}
