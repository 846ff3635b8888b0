import { dayInYear, monthOfDayNumber, toDayNumber } from "#lib/domain/day";
import { type BloomCurve, shareAtAge } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import { goesByWarmth, moreDays, type SeasonWarmth } from "./first-cut";

/** Of the stems that the curve gives a grown plant, those that a plant of this planting gives: of its age, planted when it was, less what the grower grades out herself. */
export const saleableShare = (curve: BloomCurve, planting: Planting, season: SeasonWarmth): number =>
  (1 - (planting.gradeOutShare ?? 0)) * shareAtAge(curve, planting.ageSeasons) * shareOfLate(curve, planting, season);

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

/** What a planting is graded by: the grower's own share, else its curve's. */
type Graded = { readonly planting: Pick<Planting, "gradeOutShare">; readonly curve: BloomCurve | null };

/** Whether the curve tells what is fit to sell, and not the grower's own share [F17]. */
export const isGradedByCurve = ({ planting, curve }: Graded): boolean =>
  planting.gradeOutShare === null && curve !== null && curve.saleableBySeason.length > 0;

/**
 * Stems of a plant that are fit to sell in each week of a bloom, to a millionth: each week's, times what the curve says of the season of the week's first day [F17].
 * The weeks themselves where the grower's own share counts, which takes its part of the whole, or where the curve says nothing.
 */
export function saleableWeeks(row: Graded, weeks: readonly number[], opensFrom: number): readonly number[] {
  if (!isGradedByCurve(row)) return weeks;
  return weeks.map((stems, week) => Math.round(stems * goodShareOn(row, opensFrom + week * 7) * 1e6) / 1e6);
}

/** Of the stems that are cut on a day, the share that is fit to use: what the grower does not grade out, else what the curve says of the season [F17], else all. */
export function goodShareOn({ planting, curve }: Graded, dayNumber: number): number {
  if (planting.gradeOutShare !== null) return 1 - planting.gradeOutShare;
  if (curve === null || curve.saleableBySeason.length === 0) return 1;
  return curve.saleableBySeason[seasonOf(monthOfDayNumber(dayNumber))];
}

/** Spring from March, summer from June, autumn from September, winter from December: 0 to 3. */
const seasonOf = (month: number): number => Math.floor(((month + 9) % 12) / 3);
