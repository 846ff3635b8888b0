/**
 * A moment in UTC, as the journal and the copies write it ("2026-11-25 20:43:10", "2026-11-25T20:43:10Z"), as the clock on the farm's wall said it:
 * "25 Nov 2026, 15:43". The farm's zone is the machine's, as for the day it is.
 */
export function wallTime(utc: string, timeZone?: string): string {
  const moment = new Date(`${utc.slice(0, 19).replace(" ", "T")}Z`);
  return new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short", timeZone }).format(moment);
}

/** The same moment as the time of its day alone: "15:43". */
export const wallClock = (utc: string, timeZone?: string): string => wallTime(utc, timeZone).split(", ")[1];
