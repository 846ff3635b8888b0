import { parseDay, withWeekday } from "./day";

/** A moment on the wall, "YYYY-MM-DDThh:mm". */
type WallTime = string;

/** "06:40", or of another day "Wed 9 Jun, 18:05". */
export const clockInWords = (at: WallTime, now: WallTime): string =>
  at.slice(0, 10) === now.slice(0, 10) ? at.slice(11) : `${withWeekday(parseDay(at.slice(0, 10)))}, ${at.slice(11)}`;
