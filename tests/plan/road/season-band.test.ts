import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { ROLES } from "#lib/domain/words";
import { seasonBand } from "#lib/plan/road/season-band";
import { provenPlan } from "../../proven-plan";
import { booking, curve, farm, focal, monthDay, snapshot } from "../../small-farm";

const oneFrost = {
  ...farm().frost,
  firstAutumnP10: monthDay("10-18"),
  firstAutumnP50: monthDay("10-18"),
  firstAutumnP90: monthDay("10-18"),
};

describe("the band of a week", () => {
  test("[G4] without spreads and with one frost date it is the reach of the plan", () => {
    const given = provenPlan(
      snapshot({
        farm: farm({ frost: oneFrost }),
        curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0 })],
        bookings: [booking({ id: 1, stemLines: focal(10) })],
      }),
      2027,
    );
    expect(seasonBand(given)[0][0]).toEqual({ lowStems: 30, highStems: 30 });
    expect(given.weeks[0].roles[0].reachableStems).toBe(30);
  });

  test("[G4] a yield that varies by half takes 45 % off a poor year and adds 45 % to a rich one: of 30 in reach 16 to 44, give or take a stem", () => {
    const given = provenPlan(
      snapshot({
        farm: farm({ frost: oneFrost }),
        curves: [curve({ firstCutSpreadDays: 0, yieldSpread: 0.5 })],
        bookings: [booking({ id: 1, stemLines: focal(10) })],
      }),
      2027,
    );
    const { lowStems, highStems } = seasonBand(given)[0][0];
    expect(Math.abs(lowStems - 30 * (1 - 0.453))).toBeLessThanOrEqual(1.5);
    expect(Math.abs(highStems - 30 * (1 + 0.453))).toBeLessThanOrEqual(1.5);
  });

  test("[G4] on 30 seeded farms every band holds the reach of the plan, week by week and role by role", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const given = provenPlan(seededFarm(seed, { bedCount: 16, bookingCount: 10 }), 2027);
      const bands = seasonBand(given);
      expect(bands.length).toBe(given.weeks.length);
      given.weeks.forEach(({ roles }, week) => {
        ROLES.forEach((_, role) => {
          expect(bands[week][role].lowStems).toBeLessThanOrEqual(roles[role].reachableStems);
          expect(bands[week][role].highStems).toBeGreaterThanOrEqual(roles[role].reachableStems);
        });
      });
    }
  });
});
