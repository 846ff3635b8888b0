import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import { comparedSeasonCents, seasonCents, winterCentsOf } from "#lib/plan/chance/simulated-costs";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { focal } from "../../small-farm";
import { juneFarm } from "./june-farm";
import { sampleSeasons } from "./sampled";

/** 60 focal stems wanted, at 3.00 a stem. */
const june = (): Snapshot => juneFarm(focal(60));

const farm = seededFarm(4, { bedCount: 24, bookingCount: 16 });
const kept = (count: number): number[] =>
  farm.plantings
    .filter(({ treatment }) => treatment === "spring-planted")
    .slice(0, count)
    .map(({ bedId }) => bedId);

/** What these beds kept cost in each of some seasons; without `winterCents`, the winter by the farm's own rates. */
function costs(of: Snapshot, beds: readonly number[], seed: number, seasonCount: number, winterCents?: number) {
  const samples = sampleSeasons(withKeptBeds(of, 2027, beds), 2027, seed, 0, seasonCount);
  return seasonCents(samples, winterCents ?? winterCentsOf(of, 2027, beds));
}

describe("plans of beds to keep, over sampled seasons", () => {
  test("[R6] where nothing is left to chance: one bed gives 30 of the 60 stems, two give all; each season says so", () => {
    const costOf = (beds: number[]) => [...costs(june(), beds, 1, 5, 0)];
    expect(costOf([])).toEqual([18_000, 18_000, 18_000, 18_000, 18_000]);
    expect(costOf([1])).toEqual([9000, 9000, 9000, 9000, 9000]);
    expect(costOf([1, 2])).toEqual([0, 0, 0, 0, 0]);
  });

  test("[R6] the better plan is cheaper in every season, by what it saves; a dear winter turns it round", () => {
    const free = comparedSeasonCents(costs(june(), [1, 2], 1, 40, 0), costs(june(), [], 1, 40, 0));
    expect([free.aCheaperChance.share, free.sameChance.share, free.differenceCents]).toEqual([1, 0, -18_000]);
    expect(free.differenceStandardErrorCents).toBe(0);
    const dear = comparedSeasonCents(costs(june(), [1, 2], 1, 40, 20_000), costs(june(), [], 1, 40, 0));
    expect([dear.aCheaperChance.share, dear.differenceCents]).toEqual([0, 2000]);
  });

  test("[R6] seed 81: a plan ties with itself in every season, and A against B is B against A turned round", () => {
    const [few, more] = [costs(farm, kept(1), 81, 60), costs(farm, kept(6), 81, 60)];
    const itself = comparedSeasonCents(few, costs(farm, kept(1), 81, 60));
    expect([itself.sameChance.share, itself.differenceCents, itself.differenceStandardErrorCents]).toEqual([1, 0, 0]);
    const [ab, ba] = [comparedSeasonCents(few, more), comparedSeasonCents(more, few)];
    expect(ab.aCheaperChance.share + ba.aCheaperChance.share + ab.sameChance.share).toBeCloseTo(1, 12);
    expect(ab.differenceCents).toBeCloseTo(-ba.differenceCents, 6);
    expect(ab.differenceCents).toBeCloseTo(meanOf(few) - meanOf(more), 6);
  });

  test("[R6] seed 82: the difference is surer over the same seasons than over different ones", () => {
    const [few, more] = [costs(farm, kept(2), 82, 200), costs(farm, kept(3), 82, 200)];
    const { differenceStandardErrorCents } = comparedSeasonCents(few, more);
    expect(differenceStandardErrorCents).toBeLessThan(Math.hypot(standardErrorOf(few), standardErrorOf(more)));
  });

  test("plans of other seasons are not compared", () => {
    expect(() => comparedSeasonCents(costs(june(), [], 1, 3), costs(june(), [], 1, 4))).toThrow(RangeError);
  });
});

const meanOf = (numbers: Float64Array): number => numbers.reduce((a, b) => a + b, 0) / numbers.length;

/** The textbook's: the root of the mean squared deviation (over n - 1), by the root of n. */
function standardErrorOf(numbers: Float64Array): number {
  const mean = meanOf(numbers);
  const squares = numbers.reduce((sum, number) => sum + (number - mean) ** 2, 0);
  return Math.sqrt(squares / (numbers.length - 1) / numbers.length);
}
