import { MONTHS } from "#lib/domain/day";
import { allOf } from "#lib/domain/listed";
import type { Crop } from "#lib/domain/records/crop";

/** When and in what colours a crop is to be had: "July to October; white, blush and plum". */
export function tradeInWords({ buyInMonths, buyInColours }: Pick<Crop, "buyInMonths" | "buyInColours">): string {
  return `${monthsInWords(buyInMonths)}; ${allOf(buyInColours) || "any colour"}`;
}

/** Months of the year, 1 to 12, as runs that may go over New Year: "November to May", "March, and July to October", "all year". */
export function monthsInWords(months: readonly number[]): string {
  const isIn = (month: number) => months.includes(((month + 11) % 12) + 1);
  const count = new Set(months).size;
  if (count === 0 || count === 12) return "all year";
  const runs = MONTHS.flatMap((name, index) => {
    const first = index + 1;
    if (!isIn(first) || isIn(first - 1)) return [];
    let last = first;
    while (isIn(last + 1)) last++;
    return [last === first ? name : `${name} to ${MONTHS[(last - 1) % 12]}`];
  });
  return runs.length < 2 ? runs.join() : `${runs.slice(0, -1).join(", ")}, and ${runs.at(-1)}`;
}
