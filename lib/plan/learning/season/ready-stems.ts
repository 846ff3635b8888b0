import type { Farm } from "#lib/domain/records/farm-settings";
import { weeksOfBloom } from "#lib/plan/road/bloom-end";
import { alivePlants, type Grown, replantedPlants } from "#lib/plan/road/grown";
import { pickingDays } from "#lib/plan/road/picking-days";
import { countedShare, shareLeft } from "#lib/plan/road/plants-seen";
import { isGradedByCurve, saleableWeeks } from "#lib/plan/road/saleable-share";
import { firstDayOf } from "#lib/plan/road/usual-year";

/** Days before the expected first cut from which a bloom that waits for the frost is laid out: so early no first cut is. */
const EARLIEST_DAYS = 200;

/**
 * The stems that a picking day finds ready in a planting that is so many days late, as the forecast has them but not rounded to whole stems [F3, F4]: what opened
 * since the picking day before, and is within its field days; nothing on a day that is no picking day, from the frost on in a tender crop [F5], or
 * of what would open after the heat has ended it [F11]. Plants that were seen to be lost or to have come through are not looked for in the yield [PL1]. Days late may be a fraction.
 */
export function readyStems(row: Grown, farm: Farm, frostDay: number): ReadyStems {
  const { planting, replanted, firstCut, seen } = row;
  const counted = countedShare(seen);
  const own = readyOf(row, alivePlants(planting, farm, counted), farm, frostDay);
  const latePlants = replanted === null || firstCut === null ? 0 : replantedPlants(planting, farm, counted);
  const late = replanted === null || latePlants === 0 ? null : readyOf(replanted, latePlants, farm, frostDay);
  const whole: ReadyStems = late === null ? own : (day, daysLate) => own(day, daysLate) + late(day, daysLate);
  return seen.losses.length === 0 ? whole : (day, daysLate) => whole(day, daysLate) * shareLeft(seen.losses, day);
}

type ReadyStems = (day: number, daysLate: number) => number;

function readyOf(row: Grown, plantCount: number, farm: Farm, frostDay: number): ReadyStems {
  const { planting, bed, crop, curve, firstCut, heatEnd, saleableShare } = row;
  if (!curve || firstCut === null) return () => 0;
  const yearEnd = firstDayOf(planting.seasonYear + 1);
  const bounds = { opensFrom: firstCut - EARLIEST_DAYS, frostDay: yearEnd, yearEnd };
  const weeks = weeksOfBloom(curve, crop, bounds);
  const openedFrom = openedBy(row, weeks, plantCount * saleableShare);
  const nextPickingDay = pickingDays(farm.pickingWeekdays);
  const lastDay = crop.tender ? frostDay : Number.POSITIVE_INFINITY;
  const ends = Math.min(lastDay, heatEnd ?? Number.POSITIVE_INFINITY);
  const waitsFrom = new Map<number, number>();
  const from = (day: number): number => {
    const found = waitsFrom.get(day);
    if (found !== undefined) return found;
    let first = day + 1;
    while (day - (first - 1) <= crop.fieldDays.count && nextPickingDay(first - 1, bed) === day) first--;
    waitsFrom.set(day, first);
    return first;
  };
  return (day, daysLate) => {
    if (day >= lastDay) return 0;
    const first = from(day);
    const start = firstCut + daysLate;
    const opened = openedFrom(start);
    return Math.max(0, opened(Math.min(day + 1, ends) - start) - opened(Math.min(first, ends) - start));
  };
}

/** Stems opened so many days after a first cut, by the day of that cut: what is fit to sell of them may differ with the season [F17]. */
function openedBy(row: Grown, weeks: readonly number[], plants: number): (start: number) => OpenedUntil {
  const always = openedUntil(weeks, plants);
  if (!isGradedByCurve(row)) return () => always;
  const byStart = new Map<number, OpenedUntil>();
  return (start) => {
    const startDay = Math.round(start);
    const found = byStart.get(startDay) ?? openedUntil(saleableWeeks(row, weeks, startDay), plants);
    byStart.set(startDay, found);
    return found;
  };
}

type OpenedUntil = (days: number) => number;

/** Stems opened so many days after the first cut, evenly within each week. */
function openedUntil(weeks: readonly number[], plants: number): OpenedUntil {
  const sums = new Float64Array(weeks.length + 1);
  for (let week = 0; week < weeks.length; week++) sums[week + 1] = sums[week] + weeks[week] * plants;
  return (days) => {
    const place = days / 7;
    if (place <= 0) return 0;
    if (place >= weeks.length) return sums[weeks.length];
    const week = Math.floor(place);
    return sums[week] + (place - week) * (sums[week + 1] - sums[week]);
  };
}
