import { isoWeekOf, parseDay } from "#lib/domain/day";
import type { Copy } from "./copy-name";
import { isKeptForGood } from "./remove-copy";

/** How many are kept: the newest of all, and the newest of each of the last days, weeks and months that have any. */
const KEPT = { newest: 10, days: 7, weeks: 5, months: 12 } as const;

/** Those of the copies (newest first) that are kept; the others have had their time. Copies taken by hand are never thinned. */
export function keptCopies(copies: readonly Copy[]): Copy[] {
  const dayOf = ({ takenAt }: Copy) => takenAt.slice(0, 10);
  const kept = new Set([
    ...copies.filter(isKeptForGood),
    ...copies.slice(0, KEPT.newest),
    ...newestOfEach(copies, KEPT.days, dayOf),
    ...newestOfEach(copies, KEPT.weeks, (copy) => isoWeekOf(parseDay(dayOf(copy)))),
    ...newestOfEach(copies, KEPT.months, (copy) => dayOf(copy).slice(0, 7)),
  ]);
  return copies.filter((copy) => kept.has(copy));
}

function newestOfEach(copies: readonly Copy[], count: number, spanOf: (copy: Copy) => string): Copy[] {
  const bySpan = new Map<string, Copy>();
  for (const copy of copies) if (!bySpan.has(spanOf(copy))) bySpan.set(spanOf(copy), copy);
  return [...bySpan.values()].slice(0, count);
}
