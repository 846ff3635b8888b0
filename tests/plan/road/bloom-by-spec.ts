import { dayInYear, parseDay, toDay, toDayNumber } from "#lib/domain/day";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { usualYear } from "#lib/plan/road/usual-year";
import { firstCutByAddition } from "./first-cut-by-addition";

/** When a bloom begins and ends and what lateness leaves of it, by the slow second method. */

/** The first cut [F1], or null where it is far from the season [F7]. */
export function firstCutBySpec({ farm, weather }: Snapshot, curve: BloomCurve, planting: Planting): number | null {
  const { anchor } = curve;
  if (farm.climate !== null && curve.heatBaseC !== null && curve.heatFrom !== null)
    return firstCutByAddition(curve, planting, farm.climate, weather);
  const first =
    anchor.kind === "day-of-year"
      ? toDayNumber(dayInYear(anchor.firstCut, planting.seasonYear))
      : toDayNumber(planting.plantedOn) + anchor.days + (planting.sown ? (curve.sowingDays ?? 0) : 0);
  const isFar = Math.abs(Number(toDay(first).slice(0, 4)) - planting.seasonYear) > 1;
  return isFar ? null : first + curve.laterDays;
}

/** What a late planting leaves of a grown plant's stems [F13]. */
export function shareBySpec({ farm }: Snapshot, curve: BloomCurve, planting: Planting): number {
  const { anchor, heatFrom, lateLossShare, sowingDays } = curve;
  if (farm.climate === null || curve.heatBaseC === null) return 1;
  if (anchor.kind === "day-of-year" || heatFrom === null || lateLossShare === null) return 1;
  const before = planting.sown ? (sowingDays ?? 0) : 0;
  const known = toDayNumber(dayInYear(heatFrom, planting.seasonYear)) - before;
  return Math.max(0, 1 - Math.max(0, (toDayNumber(planting.plantedOn) - known) / 7) * lateLossShare);
}

const SEASONS = [
  ["03", "04", "05"],
  ["06", "07", "08"],
  ["09", "10", "11"],
  ["12", "01", "02"],
];

/** Of what is cut on a day, the share that is fit to use [F17]. */
export function goodShareOf(curve: BloomCurve | null, { gradeOutShare }: Planting, dayNumber: number): number {
  if (gradeOutShare !== null) return 1 - gradeOutShare;
  const month = toDay(dayNumber).slice(5, 7);
  return curve?.saleableBySeason[SEASONS.findIndex((months) => months.includes(month))] ?? 1;
}

/** What of a week's stems per plant is fit to sell, to a millionth, where the grower's own share does not count for the whole [F17]. */
export function saleableBySpec(curve: BloomCurve, planting: Planting, stems: number, weekBegins: number): number {
  if (planting.gradeOutShare !== null || curve.saleableBySeason.length === 0) return stems;
  return Number((stems * goodShareOf(curve, planting, weekBegins)).toFixed(6));
}

/** The day from which heat lets nothing open [F11]. */
export function heatEndBySpec(
  { farm }: Snapshot,
  { endHighC, stemsPerPlantByWeek }: BloomCurve,
  first: number,
): number {
  if (endHighC === null || farm.climate === null) return Number.POSITIVE_INFINITY;
  for (let day = first; day < first + 7 * stemsPerPlantByWeek.length; day++) {
    const year = Number(toDay(day).slice(0, 4));
    const place = day - toDayNumber(parseDay(`${year}-01-01`));
    if (usualYear(farm.climate, year).highC[place] >= endHighC) return day;
  }
  return Number.POSITIVE_INFINITY;
}
