import { expect, test } from "vitest";
import { loadLinearSolver } from "#lib/maths/linear-programme";
import { brokenStems, coveredPromises } from "#lib/plan/road/promises";
import { winterFutures } from "#lib/plan/winter/futures";
import { highs } from "../../least-cost";
import { chosen } from "./chosen";
import { SEASON, winterFarm } from "./farm";
import { wholeProgrammeCents } from "./programme";

test("[K4] [M9] what is lost by broken promises is a part of its own, and is the least with the rest: 12 farms promised what they had with every bed kept, a third of it gone", async () => {
  const solver = await loadLinearSolver();
  let brokenCount = 0;
  for (let seed = 331; seed <= 342; seed++) {
    const farm = winterFarm(seed, 24, 20, false);
    const rich = winterFutures(farm, SEASON);
    const most = rich.match(rich.beds.map(({ forbidden }) => forbidden.length === 0));
    const bookings = farm.bookings.map((row) => ({ ...row, promises: coveredPromises(most, row.id) }));
    const plantings = farm.plantings.map((row) => ({ ...row, plantCount: Math.ceil((row.plantCount * 2) / 3) }));
    const poor = { ...farm, bookings, plantings, farm: { ...farm.farm, promiseLossCents: 1_500 } };
    const futures = winterFutures(poor, SEASON);
    const choice = chosen(poor, solver);
    if (choice.status !== "optimal") throw new RangeError(`the choice must be optimal, got ${choice.status}`);
    const match = futures.match(futures.beds.map(({ bed }) => choice.keptBedIds.includes(bed.id)));
    expect(choice.brokenStems, `seed ${seed}`).toBe(brokenStems(match));
    expect(choice.brokenCents).toBe(1_500 * choice.brokenStems);
    expect(choice.buyInCents + choice.brokenCents + choice.fitCents + choice.winterCents).toBe(choice.totalCents);
    expect(Math.abs(choice.totalCents - wholeProgrammeCents(await highs, futures)), `seed ${seed}`).toBeLessThan(0.5);
    brokenCount += choice.brokenStems;
  }
  expect(brokenCount).toBeGreaterThan(100);
});
