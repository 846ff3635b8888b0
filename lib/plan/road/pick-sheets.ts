import { isoWeekOf, toDay } from "#lib/domain/day";
import type { PickLine } from "./pick-list";

/** Which part of the season's pick list is wanted: one day, one booking, or one ISO week. */
export type PickChoice = { readonly day: string } | { readonly bookingId: number } | { readonly week: string };

/** The lines of one picking day. */
export type PickDay = { readonly cutDay: number; readonly lines: readonly PickLine[] };

/** The lines chosen, in the order of the pick list. */
export function chosenLines(pickList: readonly PickLine[], choice: PickChoice): PickLine[] {
  if ("day" in choice) return pickList.filter((line) => toDay(line.cutDay) === choice.day);
  if ("week" in choice) return pickList.filter((line) => isoWeekOf(toDay(line.cutDay)) === choice.week);
  return pickList.filter((line) => line.booking.id === choice.bookingId);
}

/** Lines day by day, the first day first. */
export function byPickingDay(lines: readonly PickLine[]): PickDay[] {
  const days = new Map<number, PickLine[]>();
  for (const line of lines) {
    const day = days.get(line.cutDay);
    if (day) day.push(line);
    else days.set(line.cutDay, [line]);
  }
  return [...days].sort(([a], [b]) => a - b).map(([cutDay, ofDay]) => ({ cutDay, lines: ofDay }));
}

/** Saleable stems, bunches and buckets of some lines added up, as the lines have them. */
export const pickTotals = (lines: readonly PickLine[]) => ({
  stems: lines.reduce((sum, line) => sum + line.stems, 0),
  bunchCount: lines.reduce((sum, line) => sum + line.bunchCount, 0),
  bucketCount: lines.reduce((sum, line) => sum + line.bucketCount, 0),
});
