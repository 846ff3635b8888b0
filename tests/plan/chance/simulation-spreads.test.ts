import { describe, expect, test } from "vitest";
import type { Planting } from "#lib/domain/records/planting";
import type { Snapshot } from "#lib/domain/snapshot";
import { normalQuantile } from "#lib/maths/normal";
import { RunningMean } from "#lib/maths/running-mean";
import { frostDatesOf, seasonSampler } from "#lib/plan/chance/sample-season";
import { DEFAULT_SPREADS } from "#lib/plan/chance/sample-spreads";
import { bed, crop, curve, farm, planting, snapshot } from "../../small-farm";

const SEASONS = 20_000;

/**
 * Two plantings of dahlias in beds 1 and 2, 50 plants each. First cut: spread 6 days; yield: coefficient of variation 0.4. Four standard
 * errors are allowed throughout: one figure in 16,000 would miss by chance.
 */
const dahlias = (
  given: Partial<Planting>,
  spread: { days?: number; yield?: number } = {},
  flags: readonly "wet soil"[] = [],
): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true })],
    curves: (["spring-planted", "kept-in-ground"] as const).map((treatment, index) =>
      curve({ id: index + 1, treatment, firstCutSpreadDays: spread.days ?? 0, yieldSpread: spread.yield ?? 0 }),
    ),
    beds: [1, 2].map((id) => bed({ id, flags: [...flags] })),
    plantings: [1, 2].map((id) => planting({ id, bedId: id, plantCount: 50, ...given })),
  });

const sampled = (farmNow: Snapshot, seed: number) => {
  const season = seasonSampler(farmNow, 2027, seed, DEFAULT_SPREADS);
  return Array.from({ length: SEASONS }, (_, index) => season(index));
};

const of = (numbers: readonly number[]): RunningMean => {
  const mean = new RunningMean();
  for (const number of numbers) mean.add(number);
  return mean;
};

/** The correlation of two lists, by their means and variances. */
function correlation(first: readonly number[], second: readonly number[]): number {
  const [a, b] = [of(first), of(second)];
  const together = of(first.map((number, index) => (number - a.mean) * (second[index] - b.mean)));
  return together.mean / Math.sqrt(a.variance() * b.variance());
}

const SOUND: Partial<Planting> = { treatment: "kept-in-ground", winterSurvivalShare: 1 };

describe("over 20,000 seasons", () => {
  test("[R5] seed 61: first cuts keep their mean, and vary by the spread squared plus 1/12 for whole days; half is the year's", () => {
    const seasons = sampled(dahlias(SOUND, { days: 6 }), 61);
    const [first, second] = [0, 1].map((index) => seasons.map(({ plantings }) => plantings[index].shiftDays));
    const variance = 36 + 1 / 12;
    expect(Math.abs(of(first).mean)).toBeLessThan(4 * Math.sqrt(variance / SEASONS));
    expect(Math.abs(of(first).variance() / variance - 1)).toBeLessThan(4 * Math.sqrt(2 / SEASONS));
    expect(Math.abs(correlation(first, second) - 18 / variance)).toBeLessThan(4 / Math.sqrt(SEASONS));
  });

  test("[R5] seed 62: yields have mean 1 and their coefficient of variation; half is the year's", () => {
    const seasons = sampled(dahlias(SOUND, { yield: 0.4 }), 62);
    const [first, second] = [0, 1].map((index) => seasons.map(({ plantings }) => plantings[index].plants / 50));
    /** A gamma's excess kurtosis is 6 times its squared coefficient of variation. */
    const ofVariance = Math.sqrt((2 + 6 * 0.16) / SEASONS);
    expect(Math.abs(of(first).mean - 1)).toBeLessThan(4 * (0.4 / Math.sqrt(SEASONS)));
    expect(Math.abs(of(first).variance() / 0.16 - 1)).toBeLessThan(4 * ofVariance);
    /** The scores correlate by a half; the gammas made of them by a little less. */
    expect(correlation(first, second)).toBeGreaterThan(0.45);
    expect(correlation(first, second)).toBeLessThan(0.5 + 4 / Math.sqrt(SEASONS));
  });

  test("[R5] seed 63: of 50 plants in the ground with 0.8 expected, 40 live; the variance is the beta-binomial's", () => {
    const seasons = sampled(dahlias({ treatment: "kept-in-ground", winterSurvivalShare: 0.8 }), 63);
    const alive = seasons.map(({ plantings }) => plantings[0].plants);
    const variance = 50 * 0.8 * 0.2 * (1 + 49 * DEFAULT_SPREADS.winterLikeness);
    const mean = of(alive);
    const fourth = of(alive.map((plants) => (plants - mean.mean) ** 4)).mean;
    expect(alive.every((plants) => plants <= 50 && Math.abs(plants - Math.round(plants)) < 1e-9)).toBe(true);
    expect(Math.abs(mean.mean - 40)).toBeLessThan(4 * Math.sqrt(variance / SEASONS));
    expect(Math.abs(mean.variance() - variance)).toBeLessThan(4 * Math.sqrt((fourth - variance ** 2) / SEASONS));
  });

  test("[R5] seed 64: wet beds live or die together more than dry ones", () => {
    const together = (flags: readonly "wet soil"[]) => {
      const seasons = sampled(dahlias({ treatment: "kept-in-ground", winterSurvivalShare: 0.8 }, {}, flags), 64);
      const [first, second] = [0, 1].map((index) => seasons.map(({ plantings }) => plantings[index].plants));
      return correlation(first, second);
    };
    const [dry, wet] = [together([]), together(["wet soil"])];
    expect(wet).toBeGreaterThan(dry + 0.2);
    expect(dry).toBeGreaterThan(0.3);
    expect(dry).toBeLessThan(0.5);
  });

  test("[R5] seed 65: what the store loses thins no bed, whatever it is, since each clump's place is planted again", () => {
    const dug = dahlias({ treatment: "spring-planted" });
    for (const storageLossShare of [0, 0.075, 0.5, 1]) {
      const farm = { ...dug, farm: { ...dug.farm, winter: { ...dug.farm.winter, storageLossShare } } };
      expect(new Set(sampled(farm, 65).map(({ plantings }) => plantings[0].plants))).toEqual(new Set([50]));
    }
  });

  test("[R5] seed 67: who dies in the ground is replanted as far as the farm replants: the living and all the dead are the clumps that were left in", () => {
    const kept = dahlias({ treatment: "kept-in-ground", winterSurvivalShare: 0.8 });
    for (const replantDeadShare of [0.5, 1]) {
      const farm = { ...kept, farm: { ...kept.farm, winter: { ...kept.farm.winter, replantDeadShare } } };
      for (const { plantings } of sampled(farm, 67).slice(0, 500))
        expect(plantings[0].plants + plantings[1].plants / replantDeadShare).toBeCloseTo(50, 9);
    }
  });

  test("[R3] seed 66: a tenth of first frosts has come by the early date, half by the median, nine tenths by the late one", () => {
    const dates = frostDatesOf(farm(), 2027);
    const frosts = sampled(snapshot(), 66).map(({ frostDay }) => frostDay);
    for (const [day, share, spreadDays] of [
      [dates.p10, 0.1, dates.p50 - dates.p10],
      [dates.p50, 0.5, dates.p90 - dates.p50],
      [dates.p90, 0.9, dates.p90 - dates.p50],
    ]) {
      /** Whole days: the share come before the day, and the share come by its end, lie either side, half a day's chance apart. */
      const density =
        Math.exp(-(normalQuantile(share) ** 2) / 2) / Math.sqrt(2 * Math.PI) / (spreadDays / normalQuantile(0.9));
      const before = frosts.filter((frost) => frost < day).length / SEASONS;
      const byItsEnd = frosts.filter((frost) => frost <= day).length / SEASONS;
      const error = 4 * Math.sqrt((share * (1 - share)) / SEASONS);
      expect(before).toBeLessThan(share + error);
      expect(byItsEnd).toBeGreaterThan(share - error);
      expect((before + byItsEnd) / 2).toBeGreaterThan(share - error - 0.1 * density);
      expect((before + byItsEnd) / 2).toBeLessThan(share + error + 0.1 * density);
    }
  });
});
