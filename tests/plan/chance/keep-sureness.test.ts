import { describe, expect, test } from "vitest";
import { keepSureness } from "#lib/plan/chance/keep-sureness";
import { comparedSeasonCents, seasonCents, winterCentsOf } from "#lib/plan/chance/simulated-costs";
import { coveredChances } from "#lib/plan/chance/simulation-summary";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { focal } from "../../small-farm";
import { SEASON, winterFarm } from "../winter/farm";
import { juneFarm } from "./june-farm";
import { sampleSeasons } from "./sampled";

/** 20 focal stems wanted, and 5 of foliage that nothing gives. */
const june = () => juneFarm([...focal(20), { ...focal(5)[0], role: "foliage" }]);

const sample = (farm: ReturnType<typeof june>, year: number, kept: readonly number[], count: number) =>
  sampleSeasons(withKeptBeds(farm, year, kept), year, 1, 0, count);

describe("how sure beds kept are", () => {
  test("where nothing is left to chance a kept bed covers the focal stems in every season, and the foliage in none", () => {
    const farm = june();
    const { bookings, focalShortStems, seasonCount } = keepSureness(
      farm,
      2027,
      [1],
      sample(farm, 2027, [], 8),
      sample(farm, 2027, [1], 8),
    );
    expect(seasonCount).toBe(8);
    expect(focalShortStems.map(({ likely }) => likely)).toEqual([20, 0]);
    expect(bookings.map(({ focalCovered }) => focalCovered?.map(({ share }) => share))).toEqual([[0, 1]]);
    expect(bookings.map(({ covered }) => covered.map(({ share }) => share))).toEqual([[0, 0]]);
  });

  test("its chances are those of the comparison and of the samples", () => {
    const farm = winterFarm(31, 12, 10);
    const kept = farm.beds.slice(0, 4).map(({ id }) => id);
    const [dug, some] = [sample(farm, SEASON, [], 30), sample(farm, SEASON, kept, 30)];
    const sure = keepSureness(farm, SEASON, kept, dug, some);
    const centsOf = (samples: typeof some, beds: number[]) => seasonCents(samples, winterCentsOf(farm, SEASON, beds));
    const compared = comparedSeasonCents(centsOf(some, kept), centsOf(dug, []));
    expect(sure.cheaperChance).toEqual(compared.aCheaperChance);
    expect(sure.differenceCents).toBeCloseTo(compared.differenceCents, 6);
    const after = coveredChances(some);
    expect(sure.bookings.length).toBe(after.size);
    for (const { bookingId, covered, focalCovered } of sure.bookings) {
      expect(covered[1]).toEqual(after.get(bookingId));
      if (focalCovered) expect(focalCovered[1].share).toBeGreaterThanOrEqual(covered[1].share);
    }
    const days = sure.bookings.map(({ eventOn }) => eventOn);
    expect(days).toEqual([...days].sort());
  });
});
