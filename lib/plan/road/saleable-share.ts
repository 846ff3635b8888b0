import { dayInYear, toDayNumber } from "#lib/domain/day";
import { type BloomCurve, shareAtAge } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import { goesByWarmth, moreDays, type SeasonWarmth } from "./first-cut";

/** Of the stems that the curve gives a grown plant, those that a plant of this planting gives to sell: not graded out, of its age, planted when it was. */
export const saleableShare = (curve: BloomCurve, planting: Planting, season: SeasonWarmth): number =>
  (1 - planting.gradeOutShare) * shareAtAge(curve, planting.ageSeasons) * shareOfLate(curve, planting, season);

/**
 * What is left of a grown plant's stems in a planting later than the day that its curve's warmth is known for [F13]. 1 where it is not later, where no loss is
 * known, and where the calendar tells the first cut.
 */
export function shareOfLate(
  curve: BloomCurve,
  { plantedOn, seasonYear, sown }: Planting,
  season: SeasonWarmth,
): number {
  const { anchor, heatFrom, lateLossShare } = curve;
  if (lateLossShare === null || heatFrom === null || season === null) return 1;
  if (anchor.kind !== "days-after-planting" || !goesByWarmth(curve, season.climate)) return 1;
  const knownDay = toDayNumber(dayInYear(heatFrom, seasonYear)) - moreDays(curve, sown);
  const weeksLate = Math.max(0, toDayNumber(plantedOn) - knownDay) / 7;
  return Math.max(0, 1 - lateLossShare * weeksLate);
}
