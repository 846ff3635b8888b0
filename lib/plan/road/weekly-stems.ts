import { type Day, toDay } from "#lib/domain/day";
import { gammaQuantile } from "#lib/maths/gamma";
import type { PlantingForecast } from "./forecast";

/** Stems that open in a week of a planting's bloom, from its first cut on: in one season of ten less than `low`, in one more than `high`. */
export type WeekStems = { readonly from: Day; readonly low: number; readonly likely: number; readonly high: number };

const LOW_SHARE = 0.1;
const HIGH_SHARE = 0.9;

/**
 * A planting's bloom week by week, up to the frost in tender crops. Low and high follow the curve's spread of yield alone, in the distribution
 * that the simulation samples (gamma, mean 1); an early or late season is not in them. No curve, no weeks.
 */
export function weeklyStems({ openingStems, opensFrom, crop, curve }: PlantingForecast, frostDay: number): WeekStems[] {
  if (!curve) return [];
  const lastDay = crop.tender ? frostDay : Number.POSITIVE_INFINITY;
  const factorAt = yieldFactor(curve.yieldSpread);
  const [low, high] = [factorAt(LOW_SHARE), factorAt(HIGH_SHARE)];
  const weeks: WeekStems[] = [];
  for (let index = 0; index < openingStems.length; index += 7) {
    const open = openingStems.subarray(index, Math.min(index + 7, Math.max(index, lastDay - opensFrom)));
    const likely = open.reduce((sum, stems) => sum + stems, 0);
    weeks.push({ from: toDay(opensFrom + index), low: likely * low, likely, high: likely * high });
  }
  return weeks;
}

function yieldFactor(coefficientOfVariation: number): (share: number) => number {
  if (coefficientOfVariation === 0) return () => 1;
  const shape = 1 / coefficientOfVariation ** 2;
  return (share) => gammaQuantile(share, shape) / shape;
}
