import type { OpenDate } from "#lib/plan/chance/open-dates";

const NAMES = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** Days under the month and year they lie in ("June 2027"), in order. */
export function monthsOf(dates: readonly OpenDate[]): { month: string; dates: OpenDate[] }[] {
  const months: { month: string; dates: OpenDate[] }[] = [];
  for (const date of dates) {
    const month = `${NAMES[Number(date.day.slice(5, 7)) - 1]} ${date.day.slice(0, 4)}`;
    const last = months.at(-1);
    if (last?.month === month) last.dates.push(date);
    else months.push({ month, dates: [date] });
  }
  return months;
}
