import { monthDayInShort } from "#lib/domain/day";
import { measureIn } from "#lib/domain/measures";
import { toFahrenheit } from "#lib/domain/weather";
import type { Units } from "#lib/domain/words";
import { monthDayAt, NEW_YEAR_INDEX } from "#lib/plan/learning/bloom-season";
import type { KnownPoint } from "#lib/plan/learning/known-point";
import { countOf, inTenths, inWholes } from "./numbers";

/** What recorded first cuts teach, answer first: how near warmth tells them, and how near their mean day. */
export function lessonInWords(point: KnownPoint, units: Units): string {
  const mean = `Their mean day, ${monthDayInShort(monthDayAt(point.meanIndex))}, is off by ${daysOff(point.meanErrorDays)}`;
  const years = countOf(point.told.length, "first cut");
  if (point.clock === null || point.clockErrorDays === null)
    return `Nothing tells these ${years} better than their mean day, ${monthDayInShort(monthDayAt(point.meanIndex))}: it is off by ${daysOff(point.meanErrorDays)}.`;
  const { baseC, startDay, sumC } = point.clock;
  const degrees = (celsius: number) =>
    units === "us" ? `${inWholes(toFahrenheit(celsius))} °F` : `${inTenths(celsius)} °C`;
  const sum = inWholes(sumC * measureIn(units, "temperature").shownPerStored);
  const start = monthDayInShort(monthDayAt(NEW_YEAR_INDEX + startDay));
  return `Warmth above ${degrees(baseC)}, counted from ${start} to ${sum} degree days, tells these ${years} within ${daysOff(point.clockErrorDays)}. ${mean}.`;
}

const daysOff = (days: number): string => `${inTenths(days)} ${days === 1 ? "day" : "days"}`;
