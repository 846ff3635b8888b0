import { dayInYear, toDayNumber } from "#lib/domain/day";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Snapshot } from "#lib/domain/snapshot";
import { weeksOfBloom } from "./bloom-end";
import { alivePlants, type Grown, grown, replantedPlants } from "./grown";
import { harvest } from "./harvest";
import { withLateStems } from "./late-stems";
import { opening, type PlantsFrom, thinnedOpening } from "./opening";
import { type NextPickingDay, pickingDays } from "./picking-days";
import { daysSeen, isSameSeen, killingFrostOf, type PlantsSeen, seenBy } from "./plants-seen";
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
  /** What it gives without what the season has shown [O5] and what was seen of its plants [PL1]: days that have passed began so. Null where that is the same. */
  readonly asPassed: PlantingForecast | null;
  /** What it gave, for days that have passed, once more of its plants was seen, day after day [PL1]. */
  readonly turns: readonly Turn[];
};

/** From a day on, as a day number, a planting is known to give this: the days before as it was. */
type Turn = { readonly fromDay: number; readonly forecast: PlantingForecast };

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
  if (!row.bare) return passed;
  const turns = daysSeen(row.seen).map((fromDay) => {
    const then = { ...bare, seen: seenBy(row.seen, fromDay) };
    const known = was?.turns.find((turn) => turn.fromDay === fromDay && restsOnTheSame(turn.forecast, then));
    return known ?? { fromDay, forecast: forecastBy(then) };
  });
  return { ...forecastBy(row), asPassed: passed, turns };
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
  isSameSeen(a.seen, b.seen) &&
  isSameBeside(a.replanted, b.replanted) &&
  isSameBeside(a.bare, b.bare);

const isSameBeside = (a: Grown | null, b: Grown | null): boolean =>
  a === b || (a !== null && b !== null && restsOnTheSame(a, b));

/** The first frost that a plan reckons with: the killing frost that was written down for the season [PL2], else the median date of the farm, as a day number. */
export const frostDayOf = (farm: Farm, seasonYear: number): number =>
  killingFrostOf(farm, seasonYear) ?? medianFrostOf(farm, seasonYear);

const medianFrostOf = (farm: Farm, seasonYear: number): number =>
  toDayNumber(dayInYear(farm.frost.firstAutumnP50, seasonYear));

/**
 * What one planting gives: the plants that stand, and later those that take the places of clumps dead in the ground [F2].
 * @param frostDay  of a season whose killing frost was written down it says nothing: until that day the plan reckoned with the median [PL2]
 */
export function forecastPlanting(
  row: Grown,
  farm: Farm,
  frostDay: number,
  nextPickingDay: NextPickingDay = pickingDays(farm.pickingWeekdays),
  year = ORDINARY_YEAR,
): PlantingForecast {
  const { planting, replanted, seen } = row;
  const isFrostKnown = killingFrostOf(farm, planting.seasonYear) !== null;
  const sky = { frostDay: isFrostKnown ? medianFrostOf(farm, planting.seasonYear) : frostDay, nextPickingDay, year };
  const own = forecastOf(
    row,
    seen,
    plantsOf(seen, (counted) => alivePlants(planting, farm, counted)),
    sky,
  );
  if (replanted === null || row.firstCut === null) return own;
  const late = plantsOf(seen, (counted) => replantedPlants(planting, farm, counted));
  return late.every(({ plantCount }) => plantCount === 0)
    ? own
    : withLateStems(own, forecastOf(replanted, seen, late, sky));
}

/** Plants from the start, as many as were expected, and from each day on which they were counted [PL1]. */
const plantsOf = (
  { cameThrough }: PlantsSeen,
  countOf: (counted: number | null) => number,
): [PlantsFrom, ...PlantsFrom[]] => [
  { fromDay: Number.NEGATIVE_INFINITY, plantCount: countOf(null) },
  ...cameThrough.map(({ fromDay, share }) => ({ fromDay, plantCount: countOf(share) })),
];

/** What a year brings a planting from outside. */
type Sky = { readonly frostDay: number; readonly nextPickingDay: NextPickingDay; readonly year: YearKind };

/**
 * What so many plants of one row give. The season's saleable stems are rounded once, shared over the weeks by the curve and over the days of a week evenly, so
 * that days sum to weeks and weeks to the season exactly [F3]. Evenly within a week is our assumption.
 */
function forecastOf(
  row: Grown,
  seen: PlantsSeen,
  plants: readonly PlantsFrom[],
  { frostDay, nextPickingDay, year }: Sky,
): PlantingForecast {
  const alivePlantCount = plants[plants.length - 1].plantCount;
  const { planting, bed, variety, crop, curve, firstCut, movedDays, heatEnd, saleableShare, replanted, bare } = row;
  if (!curve || firstCut === null) return nothingFrom(row, alivePlantCount);
  const opensFrom = firstCut + (year.daysLateOf?.(row) ?? Math.round(year.lateness * curve.firstCutSpreadDays));
  const heaviness = Math.max(0, 1 + year.heaviness * curve.yieldSpread);
  const bounds = { opensFrom, frostDay, yearEnd: firstDayOf(planting.seasonYear + 1) };
  const yielding = plants.map(({ fromDay, plantCount }) => ({
    fromDay,
    plantCount: plantCount * saleableShare * heaviness,
  }));
  const fieldDays = crop.fieldDays.count;
  const weeks = saleableWeeks(row, weeksOfBloom(curve, crop, bounds), opensFrom);
  const openingStems = thinnedOpening(opening(weeks, yielding, opensFrom, heatEnd), seen.losses, (index) => {
    const cutOn = nextPickingDay(opensFrom + index, bed);
    return cutOn - (opensFrom + index) > fieldDays ? opensFrom + index : cutOn;
  });
  const lastDay = crop.tender ? Math.min(frostDay, seen.frostDay ?? frostDay) : Number.POSITIVE_INFINITY;
  const { openedStems, cutDays, cutStems, lostInFieldStems, lostToFrostStems } = harvest(
    openingStems,
    opensFrom,
    lastDay,
    fieldDays,
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
    seen,
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
    turns: [],
  };
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
  turns: [],
});
