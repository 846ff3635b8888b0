import { inShort, PLAIN_YEAR, toDay } from "#lib/domain/day";
import { type Measure, measureIn } from "#lib/domain/measures";
import type { Climate } from "#lib/domain/records/climate";
import type { Units } from "#lib/domain/words";
import { firstDayOf, usualYear } from "#lib/plan/road/usual-year";
import { inWholes } from "./numbers";

/** Where warm-season crops begin to grow, degrees Celsius: 50 °F, the base of the published tables of growing degree days (WI-GDD). */
const GROWING_ABOVE_C = 10;

/** A usual year in a sentence, by which a grower can tell whether it is hers: its warmest time, and the days on which growth begins and ends. */
export function climateInWords(climate: Climate, units: Units): string {
  const { meanC } = usualYear(climate, PLAIN_YEAR);
  const measure = measureIn(units, "temperature");
  const warmest = meanC.indexOf(Math.max(...meanC));
  const top = `On average it is warmest about ${dayAt(warmest)}, ${degrees(meanC[warmest], measure)} by day and night together`;
  const warm = meanC.findIndex((mean) => mean >= GROWING_ABOVE_C);
  const cool = meanC.findLastIndex((mean) => mean >= GROWING_ABOVE_C);
  const limit = degrees(GROWING_ABOVE_C, measure);
  if (warm < 0) return `${top}; no day’s mean passes ${limit}.`;
  if (warm === 0) return `${top}.`;
  return `${top}; a day’s mean passes ${limit} on ${dayAt(warm)} and falls below it after ${dayAt(cool)}.`;
}

const dayAt = (index: number): string => inShort(toDay(firstDayOf(PLAIN_YEAR) + index));
const degrees = (celsius: number, { shownPerStored, shownAtZero = 0, word }: Measure): string =>
  `${inWholes(celsius * shownPerStored + shownAtZero)} ${word}`;
