import { monthDayInShort } from "#lib/domain/day";
import { measureIn } from "#lib/domain/measures";
import { toFahrenheit } from "#lib/domain/weather";
import type { Units } from "#lib/domain/words";
import { monthDayAt, NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import type { KnownPoint } from "#lib/plan/learning/known-point";
import type { PlantedPoint } from "#lib/plan/learning/planted-point";
import { countOf, inTenths, inWholes } from "./numbers";

/** What recorded first cuts teach, answer first: how near warmth tells them, and how near their mean day. */
export function lessonInWords(point: KnownPoint, units: Units): string {
  const mean = `Their mean day, ${monthDayInShort(monthDayAt(point.meanIndex))}, is off by ${daysOff(point.meanErrorDays)}`;
  const years = countOf(point.told.length, "first cut");
  if (point.clock === null || point.clockErrorDays === null)
    return `Nothing tells these ${years} better than their mean day, ${monthDayInShort(monthDayAt(point.meanIndex))}: it is off by ${daysOff(point.meanErrorDays)}.`;
  const { baseC, startDay, sumC } = point.clock;
  const sum = degreeDays(sumC, units);
  const start = monthDayInShort(monthDayAt(NEW_YEAR_INDEX + startDay));
  return `Warmth above ${degrees(baseC, units)}, counted from ${start} to ${sum}, tells these ${years} within ${daysOff(point.clockErrorDays)}. ${mean}.`;
}

/** What recorded plantings teach: how near warmth from planting tells their first cuts, and how near the mean of their days. */
export function plantedLessonInWords(point: PlantedPoint, units: Units): string {
  const meanDays = countOf(Math.round(point.meanDays), "day");
  const cuts = countOf(point.told.length, "first cut");
  if (point.clock === null || point.clockErrorDays === null)
    return `Nothing tells these ${cuts} better than the mean of their days, ${meanDays} after planting: it is off by ${daysOff(point.meanErrorDays)}.`;
  const { baseC, sumC } = point.clock;
  return `Warmth above ${degrees(baseC, units)}, from planting to ${degreeDays(sumC, units)}, tells these ${cuts} within ${daysOff(point.clockErrorDays)}. The mean of their days, ${meanDays} after planting, is off by ${daysOff(point.meanErrorDays)}.`;
}

const degrees = (celsius: number, units: Units): string =>
  units === "us" ? `${inWholes(toFahrenheit(celsius))} °F` : `${inTenths(celsius)} °C`;

const degreeDays = (sumC: number, units: Units): string =>
  `${inWholes(sumC * measureIn(units, "temperature").shownPerStored)} degree days`;

const daysOff = (days: number): string => `${inTenths(days)} ${days === 1 ? "day" : "days"}`;
