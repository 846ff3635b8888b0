import { addDays, type Day, daysBetween, parseDay, withWeekday } from "./day";

/** When picking starts, by the clock on the wall: our own judgement. */
const FIRST_PICKING = "05:00";

/** A moment on the wall, "YYYY-MM-DDThh:mm". */
type WallTime = string;

const dayOf = (at: WallTime): Day => parseDay(at.slice(0, 10));

/**
 * Whether a list is older than today's first picking: made on a day before, or today before picking starts, which it has. What was sprayed since is not on
 * it. A list from the time to come, by a wrong clock, is not old.
 */
export function isBeforeFirstPicking(madeAt: WallTime, now: WallTime): boolean {
  const start = `${dayOf(now)}T${FIRST_PICKING}`;
  return dayOf(madeAt) < dayOf(now) || (madeAt < start && now >= start);
}

/** The farm's day now, by the day it was when a list was made. @param farmDay  the farm's today when it was made */
export const farmDayNow = (farmDay: Day, madeAt: WallTime, now: WallTime): Day =>
  addDays(farmDay, Math.max(0, daysBetween(dayOf(madeAt), dayOf(now))));

/** "06:40", or of another day "Wed 9 Jun, 18:05". */
export const clockInWords = (at: WallTime, now: WallTime): string =>
  dayOf(at) === dayOf(now) ? at.slice(11) : `${withWeekday(dayOf(at))}, ${at.slice(11)}`;

/** A spray as its bed says it: nobody enters from the day it is planned for until the label's interval is over. */
export type PlannedSpray = { readonly noEntryFrom: string | null; readonly noEntryUntil: string | null };

/** Whether a bed may not be entered on a day. */
export const isClosed = ({ noEntryFrom, noEntryUntil }: PlannedSpray, day: Day): boolean =>
  noEntryFrom !== null && noEntryUntil !== null && noEntryFrom <= day && day < noEntryUntil;

/** What somebody has said on a phone of a list that stood as the farm did at the moment `asOf`: which beds were sprayed since. `on`: the day by the clock on the wall. */
export type SprayAnswer = { readonly asOf: string; readonly on: string; readonly bedIds: readonly number[] };

/** Whether a list need not be asked about: somebody has answered of it today. */
export const isAnswered = (answer: SprayAnswer | null, asOf: string, now: WallTime): boolean =>
  answer !== null && answer.asOf === asOf && answer.on === dayOf(now);

/**
 * The beds that somebody has said were sprayed, closed for the rest of the day on which it was said: that the farm is heard of again opens none, since nobody
 * may have written the spray down yet.
 */
export const closedByAnswer = (answer: SprayAnswer | null, now: WallTime): readonly number[] =>
  answer !== null && answer.on === dayOf(now) ? answer.bedIds : [];
