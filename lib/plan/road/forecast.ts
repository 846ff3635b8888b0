import { dayInYear, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { apportion, evenPart } from "#lib/maths/apportion";
import { weeksOfBloom } from "./bloom-end";
import { alivePlants, type Grown, grown, replantedPlants, wholeStems } from "./grown";
import { withLateStems } from "./late-stems";
import { type NextPickingDay, pickingDays } from "./picking-days";
import { saleableWeeks } from "./saleable-share";
import { usableStems } from "./usable";
import { firstDayOf } from "./usual-year";

/**
 * What a planting gives in a season, in saleable whole stems. Day numbers count from 1970-01-01.
 * Every stem that opens is cut, lost waiting in the field, or taken by frost:
 * `openedStems = Σ cutStems + lostInFieldStems + lostToFrostStems` [F4].
 */
export type PlantingForecast = Grown & {
  readonly alivePlantCount: number;
  /** The first day of the curve in this kind of year; 0 when there is none. */
  readonly opensFrom: number;
  /** Stems that open on each day from `opensFrom`. */
  readonly openingStems: Int32Array;
  readonly openedStems: number;
  /** Picking days with something to cut, ascending, and the stems cut on each. */
  readonly cutDays: readonly number[];
  readonly cutStems: readonly number[];
  /** Of these, the stems that can be promised [F14]. */
  readonly usableStems: readonly number[];
  readonly lostInFieldStems: number;
  readonly lostToFrostStems: number;
  /** What it gives without what the season has shown of it: days that have passed count so [O5]. Null where that is the same. */
  readonly asPassed: PlantingForecast | null;
};

/** `problems` are the plantings forecast at nothing: without a curve, or in bloom far from their season [F7]. */
export type Forecast = { readonly plantings: readonly PlantingForecast[]; readonly problems: readonly Grown[] };

/**
 * How a year turns out, in spreads of each bloom curve: `lateness` 1 is a first cut one standard deviation late, `heaviness` -1 a yield one
 * coefficient of variation light. A plan reckons with an ordinary year.
 */
export type YearKind = {
  readonly lateness: number;
  readonly heaviness: number;
  /** Days late of a planting, in place of its spread; null where the year says nothing of it. */
  readonly daysLateOf?: (row: Grown) => number | null;
};
export const ORDINARY_YEAR: YearKind = { lateness: 0, heaviness: 0 };

/**
 * What every planting of a season gives, day by day.
 * @param frostDay  the day the first frost takes tender crops; as a day number
 * @param before    a forecast for the same farm settings, frost day and kind of year: plantings of which no row has changed are taken from it
 */
export function forecast(
  snapshot: Snapshot,
  seasonYear: number,
  frostDay = frostDayOf(snapshot.farm, seasonYear),
  year = ORDINARY_YEAR,
  before: Forecast | null = null,
): Forecast {
  const nextPickingDay = pickingDays(snapshot.farm.pickingWeekdays);
  const rows = grown(snapshot, seasonYear);
  const known = new Map(before?.plantings.map((row) => [row.planting, row]));
  return {
    plantings: rows.map((row) => {
      const was = known.get(row.planting);
      return was && restsOnTheSame(was, row)
        ? was
        : withPassed(row, was, (one) => forecastPlanting(one, snapshot.farm, frostDay, nextPickingDay, year));
    }),
    problems: rows.filter(({ firstCut }) => firstCut === null),
  };
}

/** What a row gives, and beside it what it gives without what the season has shown. */
function withPassed(
  row: Grown,
  was: PlantingForecast | undefined,
  forecastBy: (row: Grown) => PlantingForecast,
): PlantingForecast {
  const wasBare = was && (was.asPassed ?? was);
  const bare = row.bare ?? row;
  const passed = wasBare && restsOnTheSame(wasBare, bare) ? wasBare : forecastBy(bare);
  return row.bare ? { ...forecastBy(row), asPassed: passed } : passed;
}

/** Whether a planting's forecast rests on the same rows, the farm's settings apart. */
export const restsOnTheSame = (a: Grown, b: Grown): boolean =>
  a.bed === b.bed &&
  a.variety === b.variety &&
  a.crop === b.crop &&
  a.curve === b.curve &&
  a.firstCut === b.firstCut &&
  a.saleableShare === b.saleableShare &&
  a.heatEnd === b.heatEnd &&
  isSameBeside(a.replanted, b.replanted) &&
  isSameBeside(a.bare, b.bare);

const isSameBeside = (a: Grown | null, b: Grown | null): boolean =>
  a === b || (a !== null && b !== null && restsOnTheSame(a, b));

/** The first frost that a plan reckons with: the median date of the farm, as a day number. */
export const frostDayOf = (farm: Farm, seasonYear: number): number =>
  toDayNumber(dayInYear(farm.frost.firstAutumnP50, seasonYear));

/** What one planting gives: the plants that stand, and later those that take the places of clumps dead in the ground [F2]. */
export function forecastPlanting(
  row: Grown,
  farm: Farm,
  frostDay: number,
  nextPickingDay: NextPickingDay = pickingDays(farm.pickingWeekdays),
  year = ORDINARY_YEAR,
): PlantingForecast {
  const { planting, replanted } = row;
  const own = forecastOf(row, alivePlants(planting, farm), frostDay, nextPickingDay, year);
  const latePlants = replanted === null || row.firstCut === null ? 0 : replantedPlants(planting, farm);
  if (replanted === null || latePlants === 0) return own;
  return withLateStems(own, forecastOf(replanted, latePlants, frostDay, nextPickingDay, year));
}

/**
 * What so many plants of one row give. The season's saleable stems are rounded once, shared over the weeks by the curve and over the days of a week evenly, so
 * that days sum to weeks and weeks to the season exactly [F3]. Evenly within a week is our assumption.
 */
function forecastOf(
  row: Grown,
  alivePlantCount: number,
  frostDay: number,
  nextPickingDay: NextPickingDay,
  year: YearKind,
): PlantingForecast {
  const { planting, bed, variety, crop, curve, firstCut, movedDays, heatEnd, saleableShare, replanted, bare } = row;
  if (!curve || firstCut === null) return nothingFrom(row, alivePlantCount);
  const opensFrom = firstCut + (year.daysLateOf?.(row) ?? Math.round(year.lateness * curve.firstCutSpreadDays));
  const heaviness = Math.max(0, 1 + year.heaviness * curve.yieldSpread);
  const bounds = { opensFrom, frostDay, yearEnd: firstDayOf(planting.seasonYear + 1) };
  const plantCount = alivePlantCount * saleableShare * heaviness;
  const weeks = saleableWeeks(row, weeksOfBloom(curve, crop, bounds), opensFrom);
  const openingStems = opening(weeks, plantCount, opensFrom, heatEnd);
  const lastDay = crop.tender ? frostDay : Number.POSITIVE_INFINITY;
  const { openedStems, cutDays, cutStems, lostInFieldStems, lostToFrostStems } = harvest(
    openingStems,
    opensFrom,
    lastDay,
    crop.fieldDays.count,
    (day) => nextPickingDay(day, bed),
  );
  // Field by field: copying the row with a spread costs more than all the rest.
  return {
    planting,
    bed,
    variety,
    crop,
    curve,
    firstCut,
    movedDays,
    heatEnd,
    saleableShare,
    replanted,
    bare,
    alivePlantCount,
    opensFrom,
    openingStems,
    openedStems,
    cutDays,
    cutStems,
    usableStems: usableStems(cutStems, crop.cutSpareShare.count),
    lostInFieldStems,
    lostToFrostStems,
    asPassed: null,
  };
}

type Harvest = Pick<PlantingForecast, "openedStems" | "cutDays" | "cutStems" | "lostInFieldStems" | "lostToFrostStems">;

/**
 * Where the stems that open go. Frost takes what would open on its day or later, and what waits for a picking day that would come on it or later
 * and is still fresh when it strikes [F5]. What is left is cut on the next picking day within the field days, or lost in the field [F4]; a
 * sprayed bed has no picking day before the label allows [F6].
 * @param lastDay  the frost day of a tender crop, else infinity
 */
function harvest(
  openingStems: Int32Array,
  opensFrom: number,
  lastDay: number,
  fieldDays: number,
  pickingDayFrom: (day: number) => number,
): Harvest {
  const cutDays: number[] = [];
  const cutStems: number[] = [];
  let openedStems = 0;
  let lostInFieldStems = 0;
  let lostToFrostStems = 0;
  for (let index = 0; index < openingStems.length; index++) {
    const stems = openingStems[index];
    if (stems === 0) continue;
    const opensOn = opensFrom + index;
    openedStems += stems;
    const cutOn = pickingDayFrom(opensOn);
    if (opensOn >= lastDay || (cutOn >= lastDay && lastDay - opensOn <= fieldDays)) lostToFrostStems += stems;
    else if (cutOn - opensOn > fieldDays) lostInFieldStems += stems;
    else if (cutDays.at(-1) === cutOn) cutStems[cutStems.length - 1] += stems;
    else {
      cutDays.push(cutOn);
      cutStems.push(stems);
    }
  }
  return { openedStems, cutDays, cutStems, lostInFieldStems, lostToFrostStems };
}

const nothingFrom = (row: Grown, alivePlantCount: number): PlantingForecast => ({
  ...row,
  alivePlantCount,
  opensFrom: 0,
  openingStems: new Int32Array(0),
  openedStems: 0,
  cutDays: [],
  cutStems: [],
  usableStems: [],
  lostInFieldStems: 0,
  lostToFrostStems: 0,
  asPassed: null,
});

/** Stems that open on each day of the weeks, for so many plants; whole, and exact in sum [F3], but for the days that heat takes away [F11]. */
function opening(weeks: readonly number[], plantCount: number, opensFrom: number, heatEnd: number | null): Int32Array {
  const perPlant = weeks.reduce((sum, stems) => sum + stems, 0);
  const weekStems = apportion(wholeStems(plantCount * perPlant), weeks);
  const openDays = heatEnd === null ? Number.POSITIVE_INFINITY : Math.max(0, heatEnd - opensFrom);
  const days = new Int32Array(Math.min(weekStems.length * 7, openDays));
  for (let index = 0; index < days.length; index++)
    days[index] = evenPart(weekStems[Math.floor(index / 7)], index % 7, 7);
  return days;
}
