import { expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { bottleneckFinder } from "#lib/plan/road/bottleneck";
import { stemHolders } from "#lib/plan/road/stem-holders";
import { provenPlan } from "../../proven-plan";

test("[G3] those who share a gap's stems hold all that the bottleneck can give but what is free, each stem once, on 15 farms", () => {
  let gapCount = 0;
  for (let seed = 1; seed <= 15; seed++) {
    const { match, gaps } = provenPlan(seededFarm(seed, { bedCount: 20, bookingCount: 20 }), 2027);
    const bottleneckOf = bottleneckFinder(match);
    for (const { needIndex } of gaps) {
      const bottleneck = bottleneckOf(needIndex);
      const holders = stemHolders(match, bottleneck);
      const held = holders.reduce((sum, { stems }) => sum + stems, 0);
      expect(held).toBe(bottleneck.needStems - bottleneck.shortStems);
      expect(held).toBe(bottleneck.supplyStems - bottleneck.freeStems);
      for (const { stems, held: rows } of holders) expect(rows.reduce((sum, row) => sum + row.stems, 0)).toBe(stems);
      gapCount++;
    }
  }
  expect(gapCount).toBeGreaterThan(50);
});
