import { toDayNumber, WEEKDAYS, weekdayOfDayNumber } from "#lib/domain/day";
import type { Bed } from "#lib/domain/records/bed";

/** The first picking day on or after a day, in a bed; day numbers count from 1970-01-01. */
export type NextPickingDay = (dayNumber: number, bed: Pick<Bed, "noEntryFrom" | "noEntryUntil">) => number;

/**
 * A farm's picking days. The day found is never one between a spray in the bed and the end of the label's interval [F6].
 * @param pickingWeekdays  Monday 1 … Sunday 7, at least one
 */
export function pickingDays(pickingWeekdays: readonly number[]): NextPickingDay {
  const waitDays = [1, 2, 3, 4, 5, 6, 7].map((weekday) =>
    Math.min(...pickingWeekdays.map((pick) => (pick - weekday + 7) % 7)),
  );
  const onOrAfter = (dayNumber: number) => dayNumber + waitDays[weekdayOfDayNumber(dayNumber) - 1];
  return (dayNumber, { noEntryFrom, noEntryUntil }) => {
    const day = onOrAfter(dayNumber);
    if (!noEntryFrom || !noEntryUntil || day < toDayNumber(noEntryFrom)) return day;
    const openAgain = toDayNumber(noEntryUntil);
    return day >= openAgain ? day : onOrAfter(openAgain);
  };
}

const everyDay = pickingDays(WEEKDAYS.map((_, index) => index + 1));

/** Whether a bed may be cut in on a day: it lies in no spray's interval [F6]. `day` is a day number. */
export const isOpenBed = (bed: Parameters<NextPickingDay>[1], day: number): boolean => everyDay(day, bed) === day;
