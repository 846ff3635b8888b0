import { CLIMATE_STATIONS } from "#lib/domain/catalogue/climate-stations";
import { dayInYear, type MonthDay, toDay, toDayNumber } from "#lib/domain/day";
import type { Climate } from "#lib/domain/records/climate";
import type { BloomCurve } from "#lib/domain/records/curve";
import type { Planting } from "#lib/domain/records/planting";
import type { DailyWeather } from "#lib/domain/weather";
import { usualHeat } from "#lib/plan/road/usual-heat";
import { usualYear } from "#lib/plan/road/usual-year";

type Set = Pick<Planting, "plantedOn" | "seasonYear" | "sown">;

const newYear = (year: number): number => toDayNumber(dayInYear("01-01" as MonthDay, year));

/**
 * The first cut by warmth [F1] by the slow second method: day after day is added until the sum is there, from the climate and the days that were recorded [F9]. Null where the
 * season is too cold; a curve without a base, or without warmth at its known point, is not for it.
 */
export function firstCutByAddition(
  curve: BloomCurve,
  { plantedOn, seasonYear, sown }: Set,
  climate: Climate,
  recorded: DailyWeather | null = null,
): number | null {
  const { anchor } = curve;
  const from = curve.heatFrom ?? ("01-01" as MonthDay);
  const wanted = knownSum(curve, from, climate, sown ? (curve.sowingDays ?? 0) : 0);
  const year = anchor.kind === "day-of-year" && from >= anchor.firstCut ? seasonYear - 1 : seasonYear;
  const first = toDayNumber(anchor.kind === "day-of-year" ? dayInYear(from, year) : plantedOn);
  let had = 0;
  for (let on = first; on < newYear(seasonYear + 1); on++) {
    const heat = recordedHeat(curve, on, recorded) ?? heatOn(curve, on, climate);
    if (had + heat >= wanted - 1e-6) {
      const moment = on + (wanted - had) / heat;
      const cutOn = Math.floor(moment + 0.5 + 1e-6) + curve.laterDays;
      return cutOn < newYear(seasonYear + 1) ? cutOn : null;
    }
    had += heat;
  }
  return null;
}

/** The degree days of the known point, at its place. */
function knownSum(curve: BloomCurve, from: MonthDay, own: Climate, sowingDays: number): number {
  const { anchor, heatPlace } = curve;
  const at = CLIMATE_STATIONS.find(({ station }) => station === heatPlace) ?? own;
  const start = toDayNumber(dayInYear(from, anchor.kind === "day-of-year" && from < anchor.firstCut ? 2026 : 2025));
  const cut = anchor.kind === "day-of-year" ? toDayNumber(dayInYear(anchor.firstCut, 2026)) : start + anchor.days;
  let sum = 0;
  for (let on = start - sowingDays; on < cut; on++) sum += heatOn(curve, on, at);
  return sum;
}

function heatOn(curve: BloomCurve, day: number, at: Climate): number {
  const year = Number(toDay(day).slice(0, 4));
  const { meanC } = usualYear(at, year);
  const place = day - newYear(year);
  return usualHeat(meanC[place], (place + 0.5) / meanC.length, {
    baseC: curve.heatBaseC ?? 0,
    ceilingC: curve.heatCeilingC,
    limitC: curve.heatLimitC,
  });
}

/** What a recorded day adds; null where nobody recorded it. */
function recordedHeat(
  { heatBaseC, heatCeilingC, heatLimitC }: BloomCurve,
  day: number,
  recorded: DailyWeather | null,
): number | null {
  const place = recorded === null ? -1 : day - recorded.firstDay;
  if (recorded === null || !(recorded.highC[place] > -100)) return null;
  const base = heatBaseC ?? 0;
  const mean = (recorded.highC[place] + recorded.lowC[place]) / 2;
  const most = heatCeilingC ?? Number.POSITIVE_INFINITY;
  const slows = heatLimitC !== null && heatCeilingC !== null && heatLimitC > heatCeilingC && mean > heatCeilingC;
  if (!slows) return Math.max(0, Math.min(mean, most) - base);
  const share = Math.max(0, (heatLimitC - mean) / (heatLimitC - heatCeilingC));
  return Math.max(0, heatCeilingC - base) * share;
}
