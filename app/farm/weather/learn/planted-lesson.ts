import { type BloomCurve, CURVE } from "#lib/domain/records/curve";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type BloomSeason, indexOfDay } from "#lib/plan/learning/bloom-season";
import type { PlantedFirstCut } from "#lib/plan/learning/first-cuts-on-record";
import { curveOfMeanDays, curveOfPlantedClock } from "#lib/plan/learning/learned-curve";
import { type PlantedSeason, plantedPoint } from "#lib/plan/learning/planted-point";
import type { Lesson } from "./lesson";

/** No curve can hold a wider spread of its first cut. */
export const MOST_SPREAD_DAYS = CURVE.firstCutSpreadDays.limits?.most ?? 0;

/** Plantings with the weather of their seasons, those set out within it. */
export const plantedSeasons = (seasons: readonly BloomSeason[], rows: readonly PlantedFirstCut[]): PlantedSeason[] =>
  seasons.flatMap((season, index) => {
    const { plantedOn } = rows[index];
    const plantedIndex = plantedOn === undefined ? -1 : indexOfDay(plantedOn, season);
    return plantedIndex >= 0 && plantedIndex < season.firstCutIndex ? [{ ...season, plantedIndex }] : [];
  });

/** What planting days and first cuts teach of a curve of days after planting [H11]. */
export function plantedLesson(
  farm: Farm,
  curve: BloomCurve,
  seasons: readonly PlantedSeason[],
  leftOut: readonly string[],
): Lesson {
  const no = (because: string): Lesson => ({ ok: false, because, leftOut });
  const yearCount = new Set(seasons.map(({ year }) => year)).size;
  if (seasons.length < 3 || yearCount < 2)
    return no(
      `three first cuts or more with their planting days and weather are needed, of two years or more, and there are ${seasons.length} of ${yearCount}`,
    );
  const planted = plantedPoint(seasons);
  if (planted.meanErrorDays > MOST_SPREAD_DAYS)
    return no(
      `the mean of their days misses these first cuts by more than ${MOST_SPREAD_DAYS} days: no one curve tells them`,
    );
  const meanPlanted = seasons.reduce((sum, { plantedIndex }) => sum + plantedIndex, 0) / seasons.length;
  const byClock = farm.climate && curveOfPlantedClock(curve, planted, meanPlanted, farm.climate);
  const needsClimate = farm.climate === null && planted.clock !== null;
  return { ok: true, planted, byMean: curveOfMeanDays(curve, planted), byClock, needsClimate, leftOut };
}
