import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { dayInYear, PLAIN_YEAR, toDay, toDayNumber, yearOf } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import type { DailyWeather } from "#lib/domain/weather";
import { heatBetween, momentOfHeat } from "./heat-sums";
import type { HeatRange } from "./usual-heat";
import { firstDayOf } from "./usual-year";
import { recordedWarmth, usualWarmth, type Warmth } from "./warmth";

/** The place whose warmth a season goes by; null: the farm has chosen no climate, and every crop blooms by the calendar. */
export type SeasonWarmth = { readonly climate: Climate; readonly warmth: Warmth } | null;

/** The warmth that a farm's seasons go by: recorded days as they were, every other as its climate has it. */
export const warmthOf = (
  { climate }: { readonly climate: Climate | null },
  recorded: DailyWeather | null = null,
): SeasonWarmth => climate && { climate, warmth: recorded ? recordedWarmth(climate, recorded) : usualWarmth(climate) };

/** Whether warmth tells the first cuts of a curve, and not the calendar. */
export const goesByWarmth = (curve: BloomCurve, climate: Climate): boolean => knownHeat(curve, climate, 0) !== null;

/** Days of a planting that a first cut depends on. */
type Planted = Pick<Planting, "plantedOn" | "seasonYear" | "sown">;

/**
 * The day number of a planting's first cut [F1]; null when by its curve it never blooms in its season: the warmth does not suffice by 31 December,
 * or the cut would fall neither in the season's year nor in one beside it, as after a slip of the pen in the planting year [F7].
 */
export function firstCutDay(curve: BloomCurve, planting: Planted, season: SeasonWarmth): number | null {
  const course = heatCourse(curve, planting, season);
  if (course === null) {
    const day = calendarDay(curve, planting);
    return Math.abs(yearOf(toDay(day)) - planting.seasonYear) <= 1 ? day : null;
  }
  const { fromDay, sum, sums } = course;
  const moment = momentOfHeat(sums, fromDay, sum);
  const day = moment === null ? null : Math.floor(moment + 0.5 + ROUNDING) + curve.laterDays;
  return day === null || day >= firstDayOf(planting.seasonYear + 1) ? null : day;
}

/** A moment so little short of noon is noon: sums are made in floating point. */
const ROUNDING = 1e-6;

/** The first cut by the calendar alone, as a day number. */
export const calendarDay = (curve: BloomCurve, { plantedOn, seasonYear, sown }: Planted): number =>
  curve.laterDays +
  (curve.anchor.kind === "day-of-year"
    ? toDayNumber(dayInYear(curve.anchor.firstCut, seasonYear))
    : toDayNumber(plantedOn) + curve.anchor.days + moreDays(curve, sown));

/** The days that one sown in place takes more. */
export const moreDays = ({ sowingDays }: BloomCurve, sown: boolean): number => (sown ? (sowingDays ?? 0) : 0);

/**
 * How warmth tells a first cut: degree days are counted from the morning of `fromDay`, and the first stem is cut at `sum` of them, moved by the curve's days later. Null where the
 * calendar tells it: the farm has no climate, the curve no clock, or the known point no warmth.
 */
export function heatCourse(curve: BloomCurve, { plantedOn, seasonYear, sown }: Planted, season: SeasonWarmth) {
  const { anchor, heatFrom } = curve;
  const range = heatRange(curve);
  if (season === null || range === null || heatFrom === null) return null;
  const sum = knownHeat(curve, season.climate, moreDays(curve, sown));
  if (sum === null) return null;
  const startYear = anchor.kind === "day-of-year" && heatFrom >= anchor.firstCut ? seasonYear - 1 : seasonYear;
  const fromDay = anchor.kind === "day-of-year" ? toDayNumber(dayInYear(heatFrom, startYear)) : toDayNumber(plantedOn);
  return { fromDay, sum, sums: season.warmth.sums(seasonYear, range) };
}

/** The temperatures between which a curve's warmth counts; null where it has no clock. */
export const heatRange = ({ heatBaseC, heatCeilingC, heatLimitC }: Clock): HeatRange | null =>
  heatBaseC === null ? null : { baseC: heatBaseC, ceilingC: heatCeilingC, limitC: heatLimitC };

type Clock = Pick<BloomCurve, "heatBaseC" | "heatCeilingC" | "heatLimitC">;

/**
 * The degree days of the curve's known point: from its known start, or so many days before it, to its known first cut, in a usual year at its known
 * place. Null where there are none.
 */
function knownHeat(curve: BloomCurve, own: Climate, daysBefore: number): number | null {
  const { anchor, heatFrom, heatPlace } = curve;
  const range = heatRange(curve);
  if (range === null || heatFrom === null) return null;
  const place = heatPlace === null ? own : CLIMATE_STATIONS.find(({ station }) => station === heatPlace);
  if (!place) return null;
  const sums = usualWarmth(place).sums(PLAIN_YEAR, range);
  const isOfOneYear = anchor.kind === "day-of-year" ? heatFrom < anchor.firstCut : anchor.days <= 365;
  const start = toDayNumber(dayInYear(heatFrom, isOfOneYear ? PLAIN_YEAR : PLAIN_YEAR - 1));
  const cut = anchor.kind === "day-of-year" ? toDayNumber(dayInYear(anchor.firstCut, PLAIN_YEAR)) : start + anchor.days;
  const sum = heatBetween(sums, start - (anchor.kind === "day-of-year" ? 0 : daysBefore), cut);
  return sum === null || sum <= 0 ? null : sum;
}
