import { type Day, dayInYear, toDay, toDayNumber } from "#lib/domain/day";
import type { Snapshot } from "#lib/domain/snapshot";
import { lowOn } from "#lib/domain/weather";
import type { Plan } from "./plan";

/** The frost is watched for from so many days before the date that one year in ten has had frost by. */
const WATCH_DAYS = 28;

/** A night as cold as the farm's threshold or colder. `morning` is the day in whose small hours it freezes. */
export type FrostNight = { readonly morning: Day; readonly lowC: number; readonly isTyped: boolean };

/** Whether frost is to be watched for on the plan's day: from four weeks before the early frost date of its season until the frost it reckons with [T11]. */
export function isFrostWatch({ snapshot: { farm }, seasonYear, today, frostDay }: Plan): boolean {
  if (today === null) return false;
  const early = toDayNumber(dayInYear(farm.frost.firstAutumnP10, seasonYear));
  return today >= early - WATCH_DAYS && today < frostDay;
}

/** The first night from today's on that was typed in or stands in the weather file and is at or under the threshold [T11]; null while none is known. `today` is a day number. */
export function frostNight({ farm, weather }: Pick<Snapshot, "farm" | "weather">, today: number): FrostNight | null {
  const { frostAlarmC, coldNightOn, coldNightLowC } = farm;
  const typed =
    coldNightOn !== null && coldNightLowC !== null && coldNightLowC <= frostAlarmC && toDayNumber(coldNightOn) >= today
      ? { morning: coldNightOn, lowC: coldNightLowC, isTyped: true }
      : null;
  const end = weather ? weather.firstDay + weather.lowC.length : today;
  for (let day = today; weather && day < end; day++) {
    if (typed && toDayNumber(typed.morning) <= day) break;
    const lowC = lowOn(weather, day);
    if (lowC <= frostAlarmC) return { morning: toDay(day), lowC, isTyped: false };
  }
  return typed;
}
