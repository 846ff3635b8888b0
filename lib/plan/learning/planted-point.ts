import type { WarmthOfSeason } from "./bloom-season";
import { rootMeanSquare } from "./fit-clock";

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

/** A season's degree days above a base, added up to the morning of each day. */
type Course = { readonly season: PlantedSeason; readonly heat: Float64Array };

type Judged = {
  readonly baseC: number;
  readonly sumC: number;
  readonly withinDays: number;
  readonly leftOut: readonly number[];
  readonly leftOutDays: number;
};

/** A base with the sum fitted to all plantings, and each year's errors by the sum fitted to the others; nothing where no planting had any heat. */
function judgedBase(seasons: readonly PlantedSeason[], baseC: number): Judged[] {
  const courses = seasons.map((season): Course => ({ season, heat: heatByMorning(season.meanC, baseC) }));
  const sumC = levelSum(courses);
  if (sumC === null) return [];
  const sumWithout = new Map<number, number | null>();
  for (const { year } of seasons)
    if (!sumWithout.has(year)) sumWithout.set(year, levelSum(courses.filter(({ season }) => season.year !== year)));
  const leftOut = courses.map((course) => {
    const sum = sumWithout.get(course.season.year) ?? null;
    return sum === null ? Number.POSITIVE_INFINITY : errorDays(course, sum);
  });
  const withinDays = rootMeanSquare(courses.map((course) => errorDays(course, sumC)));
  return [{ baseC, sumC, withinDays, leftOut, leftOutDays: rootMeanSquare(leftOut) }];
}

function heatByMorning(meanC: Float64Array, baseC: number): Float64Array {
  const heat = new Float64Array(meanC.length + 1);
  for (let day = 0; day < meanC.length; day++) heat[day + 1] = heat[day] + Math.max(0, meanC[day] - baseC);
  return heat;
}

/** By how many days a sum tells a first cut too late; the end of its season where the sum is never reached. */
function errorDays({ season, heat }: Course, sumC: number): number {
  const wanted = heat[season.plantedIndex] + sumC;
  let low = season.plantedIndex;
  let high = heat.length - 1;
  if (heat[high] < wanted) return high - season.firstCutIndex;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (heat[middle] >= wanted) high = middle;
    else low = middle + 1;
  }
  const before = heat[low - 1] ?? wanted;
  const part = low > season.plantedIndex && heat[low] > before ? (wanted - before) / (heat[low] - before) : 1;
  return low - 1 + part - season.firstCutIndex;
}

/** Halvings of the sum's logarithm: the day it gives is settled to well under an hour. */
const HALVINGS = 30;

/** The sum at which errors in days average out to nothing [H2]; null where no planting had any heat by its first cut. */
function levelSum(courses: readonly Course[]): number | null {
  const reached = courses.map(({ season, heat }) => heat[season.firstCutIndex] - heat[season.plantedIndex]);
  const most = Math.max(...reached);
  if (!(most > 0)) return null;
  let low = Math.log(Math.max(Math.min(...reached), most * 1e-6));
  let high = Math.log(most);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    const lateness = courses.reduce((sum, course) => sum + errorDays(course, Math.exp(middle)), 0);
    if (lateness < 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}
