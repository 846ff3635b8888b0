import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import type { Snapshot } from "#lib/domain/snapshot";
import {
  bestOverSeasons,
  compareKeepPlans,
  keepPlanOf,
  sampledKeepPlan,
  winterCentsOf,
} from "#lib/plan/chance/simulate-keep-plans";
import { bestKeepPlan } from "#lib/plan/chance/simulated-costs";
import { sampleSeasons } from "#lib/plan/chance/simulation";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { bed, booking, crop, curve, day, focal, planting, snapshot } from "../../small-farm";

/** Two dahlia beds of 70 plants: kept they bloom in the week of 7 June, dug in that of 6 September. One booking of 60 in June, at 3.00 a stem. */
const june = (): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true })],
    curves: [
      curve({ id: 1, treatment: "kept-in-ground", firstCutSpreadDays: 0, yieldSpread: 0 }),
      curve({
        id: 2,
        treatment: "spring-planted",
        anchor: { kind: "days-after-planting", days: 109 },
        firstCutSpreadDays: 0,
        yieldSpread: 0,
      }),
    ],
    beds: [bed({ id: 1 }), bed({ id: 2 })],
    plantings: [1, 2].map((id) => planting({ id, bedId: id, treatment: "spring-planted", winterSurvivalShare: 1 })),
    bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines: focal(60) })],
  });

const farm = seededFarm(4, { bedCount: 24, bookingCount: 16 });
const kept = (count: number): number[] =>
  farm.plantings
    .filter(({ treatment }) => treatment === "spring-planted")
    .slice(0, count)
    .map(({ bedId }) => bedId);

describe("plans of beds to keep, over sampled seasons", () => {
  test("[R6] where nothing is left to chance: one bed gives 30 of the 60 stems, two give all; each season says so", () => {
    const costOf = (beds: number[]) => sampledKeepPlan(june(), 2027, beds, 1, 5, { winterCents: () => 0 });
    expect([...costOf([]).costCents]).toEqual([18_000, 18_000, 18_000, 18_000, 18_000]);
    expect([...costOf([1]).costCents]).toEqual([9000, 9000, 9000, 9000, 9000]);
    expect([...costOf([1, 2]).costCents]).toEqual([0, 0, 0, 0, 0]);
    expect(costOf([1]).expectedSeasonCents).toBe(9000);
  });

  test("[R6] the better plan is cheaper in every season, by what it saves; a dear winter turns it round", () => {
    const free = compareKeepPlans(june(), 2027, [1, 2], [], 1, 40, { winterCents: () => 0 });
    expect([free.aCheaperChance.share, free.sameChance.share, free.differenceCents]).toEqual([1, 0, -18_000]);
    expect(free.differenceStandardErrorCents).toBe(0);
    const dear = compareKeepPlans(june(), 2027, [1, 2], [], 1, 40, { winterCents: (beds) => 10_000 * beds.length });
    expect([dear.aCheaperChance.share, dear.differenceCents]).toEqual([0, 2000]);
  });

  test("[R6] seed 81: a plan ties with itself in every season, and A against B is B against A turned round", () => {
    const itself = compareKeepPlans(farm, 2027, kept(3), kept(3), 81, 60);
    expect([itself.sameChance.share, itself.differenceCents, itself.differenceStandardErrorCents]).toEqual([1, 0, 0]);
    const [ab, ba] = [
      [kept(1), kept(6)],
      [kept(6), kept(1)],
    ].map(([a, b]) => compareKeepPlans(farm, 2027, a, b, 81, 60));
    expect(ab.aCheaperChance.share + ba.aCheaperChance.share + ab.sameChance.share).toBeCloseTo(1, 12);
    expect(ab.differenceCents).toBeCloseTo(-ba.differenceCents, 6);
    expect(ab.differenceCents).toBeCloseTo(ab.meanCentsA - ab.meanCentsB, 6);
  });

  test("[R6] seed 82: the difference is surer over the same seasons than over different ones", () => {
    const [few, more] = [kept(2), kept(3)].map((beds) => bestOverSeasons(farm, 2027, [beds], 82, 200).plans[0]);
    const paired = compareKeepPlans(farm, 2027, kept(2), kept(3), 82, 200).differenceStandardErrorCents;
    expect(paired).toBeLessThan(Math.hypot(few.standardErrorCents, more.standardErrorCents));
  });

  test("seed 83: the best over the seasons has the least mean, and what looks best as expected loses the rest", () => {
    const candidates = [[], kept(2), kept(5)];
    const { plans, bestIndex, bestWhenAsExpectedIndex, lossCents } = bestOverSeasons(farm, 2027, candidates, 83, 60);
    const means = plans.map(({ meanCents }) => meanCents);
    expect(means[bestIndex]).toBe(Math.min(...means));
    expect(plans[bestWhenAsExpectedIndex].expectedSeasonCents).toBe(
      Math.min(...plans.map(({ expectedSeasonCents }) => expectedSeasonCents)),
    );
    expect(lossCents).toBeCloseTo(means[bestWhenAsExpectedIndex] - means[bestIndex], 6);
    expect(lossCents).toBeGreaterThanOrEqual(0);
    expect(() => bestKeepPlan([])).toThrow(RangeError);
  });

  test("a plan from samples taken elsewhere costs the same", () => {
    const beds = kept(2);
    const chosen = withKeptBeds(farm, 2027, beds);
    const samples = sampleSeasons(chosen, 2027, 84, 0, 20);
    const elsewhere = keepPlanOf(chosen, 2027, beds, winterCentsOf(farm, 2027, beds), samples);
    expect(elsewhere).toEqual(sampledKeepPlan(farm, 2027, beds, 84, 20));
  });
});
