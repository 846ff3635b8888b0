import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { bookingColours } from "#lib/plan/road/booking-colours";
import { coverageByBooking } from "#lib/plan/road/coverage";
import { provenPlan } from "../../proven-plan";

test.each([3, 8, 21])("the colours of a booking sum to the stems it is not short (farm %i)", (seed) => {
  const { match, gaps } = provenPlan(seededFarm(seed, { bedCount: 20, bookingCount: 12 }), 2027);
  const colours = bookingColours(match);
  for (const [id, { needStems, shortStems }] of coverageByBooking(match, gaps)) {
    const stems = (colours.get(id) ?? []).reduce((sum, row) => sum + row.stems, 0);
    expect(stems).toBe(needStems - shortStems);
  }
});
