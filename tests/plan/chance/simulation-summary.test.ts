import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { ROLES } from "#lib/domain/words";
import { coveredChances, shortBand } from "#lib/plan/chance/simulation-summary";
import { provenPlan } from "../../proven-plan";
import { booking, curve, focal, planting, snapshot } from "../../small-farm";
import { sampleSeasons } from "./sampled";

/** 70 stems in a week, 30 of them in reach of a booking of 30. */
const tight = (yieldSpread: number) =>
  snapshot({
    curves: [curve({ firstCutSpreadDays: 0, yieldSpread })],
    plantings: [planting({ id: 1 })],
    bookings: [booking({ id: 1, stemLines: focal(30) })],
  });

describe("a summary of sampled seasons", () => {
  test("[R7] without a spread a booking of the 30 stems in reach is covered in all of 50 seasons", () => {
    const samples = sampleSeasons(tight(0), 2027, 1, 0, 50);
    expect([...coveredChances(samples)]).toEqual([[1, { share: 1, standardError: expect.any(Number) }]]);
    expect(shortBand(samples, "focal")).toEqual({ low: 0, likely: 0, high: 0 });
  });

  test("[R7] seed 71: with a yield that varies it is covered in the half of seasons in which the yield is usual or better", () => {
    const seasonCount = 4000;
    const samples = sampleSeasons(tight(0.2), 2027, 71, 0, seasonCount);
    const chance = coveredChances(samples).get(1);
    const covered = samples.shortStems.filter((short) => short === 0).length;
    expect(chance?.share).toBe(covered / seasonCount);
    /** A gamma of shape 25 lies above its mean with chance 0.473; rounding to whole stems moves the edge by at most half a stem in 30. */
    expect(chance?.share).toBeGreaterThan(0.4);
    expect(chance?.share).toBeLessThan(0.55);
    expect(chance?.standardError).toBeCloseTo(Math.sqrt(0.25 / seasonCount), 3);
  });

  test("[R7] over an invented farm low, likely and high stand in order, and a booking is short when any of its roles is", () => {
    const samples = sampleSeasons(seededFarm(7, { bedCount: 30, bookingCount: 20 }), 2027, 72, 0, 200);
    for (const role of ROLES) {
      const { low, likely, high } = shortBand(samples, role);
      expect(low <= likely && likely <= high).toBe(true);
    }
    const byRole = ROLES.map((role) => coveredChances(samples, role));
    for (const [bookingId, { share }] of coveredChances(samples)) {
      const shortShares = byRole.flatMap((chances) => {
        const chance = chances.get(bookingId);
        return chance ? [1 - chance.share] : [];
      });
      expect(1 - share).toBeGreaterThanOrEqual(Math.max(...shortShares) - 1e-12);
      expect(1 - share).toBeLessThanOrEqual(shortShares.reduce((a, b) => a + b, 0) + 1e-12);
    }
  });

  test("[R7] the needs are those of the plan, in its order", () => {
    const farm = seededFarm(8, { bedCount: 10, bookingCount: 10 });
    const { needs } = sampleSeasons(farm, 2027, 1, 0, 1).frame;
    expect(needs.map(({ bookingId, role }) => [bookingId, role])).toEqual(
      provenPlan(farm, 2027).match.needs.map((need) => [need.booking.id, need.role]),
    );
  });

  test("no season is nothing to sum up", () => {
    const none = sampleSeasons(tight(0), 2027, 1, 0, 0);
    expect(() => coveredChances(none)).toThrow(RangeError);
    expect(() => shortBand(none, "focal")).toThrow(RangeError);
  });
});
