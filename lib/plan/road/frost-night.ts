import { type Day, dayInYear, toDay, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { lowOn } from "#lib/domain/weather";
import type { Plan } from "./plan";
import { firstDayOf } from "./usual-year";

/** The frost is watched for from so many days before the date that one year in ten has had frost by. */
const WATCH_DAYS = 28;

/** A night as cold as the farm's threshold or colder. `morning` is the day in whose small hours it freezes. */
export type FrostNight = { readonly morning: Day; readonly lowC: number; readonly isTyped: boolean };

/** Whether a killing frost may be written down on a day, as a day number: from the frost watch of its season until the end of its year. */
export const isFrostDue = (farm: Farm, seasonYear: number, today: number): boolean =>
  today >= watchFrom(farm, seasonYear) && today < firstDayOf(seasonYear + 1);

const watchFrom = (farm: Farm, seasonYear: number): number =>
  toDayNumber(dayInYear(farm.frost.firstAutumnP10, seasonYear)) - WATCH_DAYS;

/** Whether frost is to be watched for on the plan's day: from four weeks before the early frost date of its season until the frost it reckons with [T11]. */
export function isFrostWatch({ snapshot: { farm }, seasonYear, today, frostDay }: Plan): boolean {
  if (today === null) return false;
  return today >= watchFrom(farm, seasonYear) && today < frostDay;
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
