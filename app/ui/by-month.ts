import { monthAndYear, toDay } from "#lib/domain/day";

/** Rows under the month and year of their day ("June 2027"), both in the order of the rows. `dayOf` gives a row's day number. */
export function byMonth<Row>(
  rows: readonly Row[],
  dayOf: (row: Row) => number,
): { readonly month: string; readonly rows: readonly Row[] }[] {
  const months = new Map<string, Row[]>();
  for (const row of rows) {
    const month = monthAndYear(toDay(dayOf(row)));
    const known = months.get(month);
    if (known) known.push(row);
    else months.set(month, [row]);
  }
  return [...months].map(([month, ofMonth]) => ({ month, rows: ofMonth }));
}
