import { type HeatSums, heatBetween, heatSums, momentOfHeat } from "#lib/plan/road/heat-sums";
import type { WarmthOfSeason } from "./bloom-season";
import { levelSum, rootMeanSquare } from "./fit-clock";
import { heatOfDay } from "./heat-clock";

/** A planting whose planting day and first cut were recorded, both as indexes into the warmth of its season. */
export type PlantedSeason = WarmthOfSeason & { readonly plantedIndex: number; readonly firstCutIndex: number };

/** What recorded plantings propose for a curve of days after planting: the mean of their days, and the degree days from planting that tell them best. */
export type PlantedPoint = {
  readonly meanDays: number;
  readonly meanErrorDays: number;
  /** Null where no degree days err less than the mean does. */
  readonly clock: { readonly baseC: number; readonly sumC: number } | null;
  readonly clockErrorDays: number | null;
  readonly told: readonly ToldPlanting[];
};

/** A planting's first cut as recorded, and as the other years tell it; indexes into its season. */
export type ToldPlanting = {
  readonly year: number;
  readonly plantedIndex: number;
  readonly recordedIndex: number;
  readonly byClockIndex: number | null;
  readonly byMeanIndex: number;
};

/** Bases that are looked at, degrees Celsius: every half degree from 0 to 15, beyond which no cut flower's stands. From memory. */
const BASES_C = Array.from({ length: 31 }, (_, step) => step / 2);

/**
 * Finds the degree days from planting that tell recorded first cuts best [H11]. Plantings of one year share its weather, so each year is told by the
 * others alone. On the recorded plantings themselves what is proposed never errs more than the mean of their days.
 * @throws RangeError if there are fewer than three plantings, or all are of one year
 */
export function plantedPoint(seasons: readonly PlantedSeason[]): PlantedPoint {
  const years = new Set(seasons.map(({ year }) => year));
  if (seasons.length < 3 || years.size < 2)
    throw new RangeError(`seasons must be three plantings or more, of two years or more, got ${seasons.length}`);
  const meanDays = meanOf(seasons);
  const meanLeftOut = seasons.map(({ year }) => meanOf(seasons.filter((other) => other.year !== year)));
  const errorOfMean = (days: number, { plantedIndex, firstCutIndex }: PlantedSeason) =>
    plantedIndex + days - firstCutIndex;
  const meanWithin = rootMeanSquare(seasons.map((season) => errorOfMean(meanDays, season)));
  const meanErrorDays = rootMeanSquare(seasons.map((season, index) => errorOfMean(meanLeftOut[index], season)));
  const best = BASES_C.flatMap((baseC) => judgedBase(seasons, baseC))
    .filter(({ withinDays, leftOutDays }) => withinDays <= meanWithin && leftOutDays < meanErrorDays)
    .sort((a, b) => a.leftOutDays - b.leftOutDays)[0];
  return {
    meanDays,
    meanErrorDays,
    clock: best ? { baseC: best.baseC, sumC: best.sumC } : null,
    clockErrorDays: best?.leftOutDays ?? null,
    told: seasons.map(({ year, plantedIndex, firstCutIndex }, index) => ({
      ...{ year, plantedIndex, recordedIndex: firstCutIndex },
      byClockIndex: best ? firstCutIndex + best.leftOut[index] : null,
      byMeanIndex: plantedIndex + meanLeftOut[index],
    })),
  };
}

const meanOf = (seasons: readonly PlantedSeason[]): number =>
  seasons.reduce((sum, { plantedIndex, firstCutIndex }) => sum + firstCutIndex - plantedIndex, 0) / seasons.length;

/** A season with its degree days above a base. */
type Course = { readonly season: PlantedSeason; readonly sums: HeatSums };

type Judged = {
  readonly baseC: number;
  readonly sumC: number;
  readonly withinDays: number;
  readonly leftOut: readonly number[];
  readonly leftOutDays: number;
};

/** A base with the sum fitted to all plantings, and each year's errors by the sum fitted to the others; nothing where no planting had any heat. */
function judgedBase(seasons: readonly PlantedSeason[], baseC: number): Judged[] {
  const courses = seasons.map(
    (season): Course => ({
      season,
      sums: heatSums(
        0,
        season.meanC.map((meanC) => heatOfDay(meanC, { baseC })),
      ),
    }),
  );
  const sumC = sumOf(courses);
  if (sumC === null) return [];
  const sumWithout = new Map<number, number | null>();
  for (const { year } of seasons)
    if (!sumWithout.has(year)) sumWithout.set(year, sumOf(courses.filter(({ season }) => season.year !== year)));
  const leftOut = courses.map((course) => {
    const sum = sumWithout.get(course.season.year) ?? null;
    return sum === null ? Number.POSITIVE_INFINITY : errorDays(course, sum);
  });
  const withinDays = rootMeanSquare(courses.map((course) => errorDays(course, sumC)));
  return [{ baseC, sumC, withinDays, leftOut, leftOutDays: rootMeanSquare(leftOut) }];
}

/** By how many days a sum tells a first cut too late; the end of its season where the sum is never reached. */
const errorDays = ({ season, sums }: Course, sumC: number): number =>
  (momentOfHeat(sums, season.plantedIndex, sumC) ?? season.meanC.length) - season.firstCutIndex;

const sumOf = (courses: readonly Course[]): number | null =>
  levelSum(
    courses.map(({ season, sums }) => heatBetween(sums, season.plantedIndex, season.firstCutIndex) ?? 0),
    (sumC) => courses.reduce((late, course) => late + errorDays(course, sumC), 0),
  );
