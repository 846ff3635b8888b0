import { gammaQuantile } from "#lib/maths/gamma";
import { normalQuantile, normalShare } from "#lib/maths/normal";
import type { RandomSource } from "#lib/maths/random";
import {
  CROP_YIELD_SHARE,
  type CutSeen,
  DISPERSION,
  SEASON_SHARE,
  type WatchedPlanting,
} from "#lib/plan/learning/season/season-model";

/** An invented planting: blooms from `firstDay` over weeks of these stems, picked every third day. */
export type InventedPlanting = Omit<WatchedPlanting, "timing" | "cuts"> & { readonly firstDay: number };

/** Every third day is a picking day. */
export const isPickingDay = (day: number): boolean => day % 3 === 0;

export function inventedPlanting(
  given: Omit<InventedPlanting, "readyStems"> & { readonly weeks: readonly number[] },
): InventedPlanting {
  const opened = (days: number) =>
    given.weeks.reduce((sum, stems, week) => sum + stems * Math.min(1, Math.max(0, days / 7 - week)), 0);
  return {
    ...given,
    readyStems: (day, late) =>
      isPickingDay(day) ? opened(day + 1 - given.firstDay - late) - opened(day - 2 - given.firstDay - late) : 0,
  };
}

/** How a season turned out, planting by planting. */
export type Turned = { readonly daysLate: number; readonly yieldFactor: number };

/** Draws a normal score. */
const score = (random: RandomSource): number => normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, random())));

/** A score with heavy tails: Student's t with three degrees, brought to variance one. */
const heavyScore = (random: RandomSource): number => {
  const square = score(random) ** 2 + score(random) ** 2 + score(random) ** 2;
  return score(random) / Math.sqrt(square / 3) / Math.sqrt(3);
};

/** A season of the model's own kind: what it says of first cuts and yields, drawn from the top down. */
export function ownSeason(random: RandomSource, plantings: readonly InventedPlanting[]): Turned[] {
  const season = score(random);
  return turned(
    random,
    plantings,
    () => Math.sqrt(SEASON_SHARE) * season + Math.sqrt(1 - SEASON_SHARE) * score(random),
    score,
  );
}

/** A season of another kind: heavy tails, every crop late by itself, and yields that lean on how late a planting is. */
export function otherSeason(random: RandomSource, plantings: readonly InventedPlanting[]): Turned[] {
  return turned(random, plantings, () => heavyScore(random), heavyScore);
}

function turned(
  random: RandomSource,
  plantings: readonly InventedPlanting[],
  cropScore: () => number,
  own: (random: RandomSource) => number,
): Turned[] {
  const crops = new Map(
    [...new Set(plantings.map(({ cropId }) => cropId))].map((id) => [id, { late: cropScore(), heavy: score(random) }]),
  );
  return plantings.map(({ cropId, sharedSpreadDays, ownSpreadDays, yieldSpread }) => {
    const crop = crops.get(cropId) ?? { late: 0, heavy: 0 };
    const heavy = Math.sqrt(CROP_YIELD_SHARE) * crop.heavy + Math.sqrt(1 - CROP_YIELD_SHARE) * score(random);
    const shape = 1 / yieldSpread ** 2;
    return {
      daysLate: sharedSpreadDays * crop.late + ownSpreadDays * own(random),
      yieldFactor: gammaQuantile(normalShare(heavy), shape) / shape,
    };
  });
}

/** Stems that a picking day of the season finds ready. */
export function foundStems(random: RandomSource, planting: InventedPlanting, turn: Turned, day: number): number {
  const expected = planting.readyStems(day, turn.daysLate) * turn.yieldFactor;
  const size = 1 / DISPERSION ** 2;
  const share = () => Math.min(1 - 1e-9, Math.max(1e-9, random()));
  return expected <= 0 ? 0 : poissonQuantile(share(), (expected * gammaQuantile(share(), size)) / size);
}

/** A season picked to the list: each picking day asks for `askedShare` of what is expected; what fills the list says only "at least". */
export function pickedToTheList(
  random: RandomSource,
  planting: InventedPlanting,
  turn: Turned,
  days: readonly number[],
  askedShare: number,
): (CutSeen & { readonly found: number })[] {
  return days.filter(isPickingDay).flatMap((day) => {
    const found = foundStems(random, planting, turn, day);
    const asked = Math.ceil(planting.readyStems(day, 0) * askedShare);
    if (asked === 0) return [];
    const isFilled = found >= asked;
    return [
      {
        day,
        stems: Math.min(found, asked),
        says: isFilled ? ("at least" as const) : ("all that was ready" as const),
        found,
      },
    ];
  });
}

/** From this mean on a count is taken from the normal distribution, which then lies within a part in a hundred of its spread. */
const MANY = 50;

/**
 * The smallest count that at least `share` of a Poisson distribution does not pass; from a mean of 50 on by the normal distribution with the same mean and variance, to the nearest whole.
 * @param share  between 0 and 1, neither included
 * @param mean   0 or more
 */
function poissonQuantile(share: number, mean: number): number {
  if (mean >= MANY) return Math.max(0, Math.round(mean + normalQuantile(share) * Math.sqrt(mean)));
  let chance = Math.exp(-mean);
  let below = chance;
  let count = 0;
  while (below < share && chance > 0) {
    count += 1;
    chance *= mean / count;
    below += chance;
  }
  return count;
}
