import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { sampleSeasons } from "#lib/plan/chance/simulation";
import { summary } from "#lib/plan/chance/simulation-summary";
import { provenPlan } from "../../proven-plan";
import { booking, curve, day, focal, planting, snapshot } from "../../small-farm";

/** 70 stems in a week, 30 of them in reach of a booking of 30. */
const tight = (yieldSpread: number) =>
  snapshot({
    curves: [curve({ firstCutSpreadDays: 0, yieldSpread })],
    plantings: [planting({ id: 1 })],
    bookings: [booking({ id: 1, stemLines: focal(30) })],
  });

describe("a summary of sampled seasons", () => {
  test("[R7] without a spread a booking of the 30 stems in reach is covered in all of 50 seasons", () => {
    const { bookings, weeks, needs, focalShortStems } = summary(sampleSeasons(tight(0), 2027, 1, 0, 50));
    expect(bookings).toEqual([
      {
        bookingId: 1,
        shortStems: { low: 0, likely: 0, high: 0 },
        coveredChance: { share: 1, standardError: expect.any(Number) },
      },
    ]);
    expect(needs[0].shortChance.share).toBe(0);
    expect(focalShortStems.high).toBe(0);
    const week = weeks.find(({ monday }) => monday === "2027-06-07");
    expect(week?.roles[0].reachableStems).toEqual({ low: 30, likely: 30, high: 30 });
  });

  test("[R7] a week is short in the seasons in which its own bookings are: 30 of 60 stems in one week, none in the next", () => {
    const farm = snapshot({
      curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0, stemsPerPlantByWeek: [1, 1, 1] })],
      bookings: [
        booking({ id: 1, stemLines: focal(60) }),
        booking({ id: 2, eventOn: day("2027-06-19"), stemLines: focal(5) }),
      ],
    });
    const { weeks } = summary(sampleSeasons(farm, 2027, 1, 0, 20));
    expect(weeks.map(({ monday, roles }) => [monday, roles[0].shortStems.likely, roles[0].shortChance.share])).toEqual([
      ["2027-06-07", 30, 1],
      ["2027-06-14", 0, 0],
      ["2027-06-21", 0, 0],
      ["2027-06-28", 0, 0],
    ]);
  });

  test("[R7] seed 71: with a yield that varies it is covered in the half of seasons in which the yield is usual or better", () => {
    const seasonCount = 4000;
    const samples = sampleSeasons(tight(0.2), 2027, 71, 0, seasonCount);
    const { bookings, needs } = summary(samples);
    const covered = samples.shortStems.filter((short) => short === 0).length;
    expect(bookings[0].coveredChance.share).toBe(covered / seasonCount);
    expect(needs[0].shortChance.share).toBeCloseTo(1 - covered / seasonCount, 12);
    /** A gamma of shape 25 lies above its mean with chance 0.473; rounding to whole stems moves the edge by at most half a stem in 30. */
    expect(bookings[0].coveredChance.share).toBeGreaterThan(0.4);
    expect(bookings[0].coveredChance.share).toBeLessThan(0.55);
    expect(bookings[0].coveredChance.standardError).toBeCloseTo(Math.sqrt(0.25 / seasonCount), 3);
  });

  test("[R7] over an invented farm low, likely and high stand in order, and a booking is short when any of its needs is", () => {
    const samples = sampleSeasons(seededFarm(7, { bedCount: 30, bookingCount: 20 }), 2027, 72, 0, 200);
    const { weeks, bookings, needs, openDays, buyInCents } = summary(samples);
    const bands = [
      ...weeks.flatMap(({ roles }) => roles.flatMap(({ reachableStems, shortStems }) => [reachableStems, shortStems])),
      ...bookings.map(({ shortStems }) => shortStems),
      ...openDays.flatMap(({ stems, byColour }) => [stems, ...byColour.map((colour) => colour.stems)]),
      buyInCents,
    ];
    for (const { low, likely, high } of bands) expect(low <= likely && likely <= high).toBe(true);
    for (const { bookingId, coveredChance } of bookings) {
      const ofBooking = needs
        .filter((need) => need.bookingId === bookingId)
        .map(({ shortChance }) => shortChance.share);
      expect(1 - coveredChance.share).toBeGreaterThanOrEqual(Math.max(...ofBooking) - 1e-12);
      expect(1 - coveredChance.share).toBeLessThanOrEqual(ofBooking.reduce((a, b) => a + b, 0) + 1e-12);
    }
    expect(buyInCents.mean).toBeCloseTo(samples.buyInCents.reduce((a, b) => a + b, 0) / 200, 3);
  });

  test("[R7] the needs are those of the plan, in its order", () => {
    const farm = seededFarm(8, { bedCount: 10, bookingCount: 10 });
    const { needs } = summary(sampleSeasons(farm, 2027, 1, 0, 1));
    expect(needs.map(({ bookingId, role }) => [bookingId, role])).toEqual(
      provenPlan(farm, 2027).match.needs.map((need) => [need.booking.id, need.role]),
    );
  });

  test("no season is nothing to sum up", () => {
    expect(() => summary(sampleSeasons(snapshot(), 2027, 1, 0, 0))).toThrow(RangeError);
  });
});
