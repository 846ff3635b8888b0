import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { ROLES } from "#lib/domain/words";
import { bloomByCrop } from "#lib/plan/road/bloom-by-crop";
import { provenPlan } from "../../proven-plan";

test("stems by crop, colour and week sum to what the plantings of the role give, on 10 farms", () => {
  for (let seed = 1; seed <= 10; seed++) {
    const season = provenPlan(seededFarm(seed, { bedCount: 30, bookingCount: 20 }), 2027);
    const mondays = season.weeks.map(({ monday }) => monday);
    for (const role of ROLES) {
      const crops = bloomByCrop(season, role, mondays);
      const given = season.forecast.plantings
        .filter(({ crop }) => crop.roles.includes(role))
        .flatMap(({ cutStems }) => cutStems)
        .reduce((sum, stems) => sum + stems, 0);
      const byWeek = crops.flatMap(({ colours }) => colours.flatMap(({ weekStems }) => weekStems));
      expect(byWeek.reduce((sum, stems) => sum + stems, 0)).toBe(given);
      expect(crops.reduce((sum, { stems }) => sum + stems, 0)).toBe(given);
    }
  }
});
