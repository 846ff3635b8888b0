import { beforeAll, describe, expect, test } from "vitest";
import { demoSnapshot } from "#demo/demo-snapshot";
import type { Snapshot } from "#lib/domain/snapshot";
import { type LinearSolver, loadLinearSolver } from "#lib/maths/linear-programme";
import { keepBoard } from "#lib/plan/what-if/keep-board";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { limitMet, mostBedsKept, runsShort, winterLimits } from "#lib/plan/winter/limits";
import { provenPlan } from "../../proven-plan";
import { chosen } from "./chosen";
import { SEASON, winterFarm } from "./farm";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

/** 1 ft = 0.3048 m exactly (international foot, 1959). */
const METRES_PER_FOOT = 0.3048;

/** Covers as wide as the bed, laid as deep as they stay and hauled for nothing; the dead left dead. */
const NO_EDGES = {
  ...{ leafSettlingShare: 0, leafEdgeMetres: 0, leafHaulHoursPerCubicMetre: 0, tarpEdgeMetres: 0 },
  replantDeadShare: 0,
};

const sized = (
  snapshot: Snapshot,
  lengthMetres: number,
  widthMetres: number,
  at: Partial<Snapshot["farm"]["winter"]>,
) => ({
  ...snapshot,
  beds: snapshot.beds.map((bed) => ({ ...bed, lengthMetres, widthMetres })),
  farm: { ...snapshot.farm, winter: { ...snapshot.farm.winter, ...NO_EDGES, ...at } },
});

/** What is short when the first so many candidate beds are kept. */
const shortWith = (snapshot: Snapshot, keptCount: number) => {
  const beds = winterBeds(snapshot, SEASON);
  return runsShort(
    winterLimits(snapshot.farm, beds),
    beds.map((_, bed) => bed < keptCount),
  );
};

describe("limits that are met exactly", () => {
  test("[K3] of beds 50 by 4 feet, 200 square feet each, 600 square feet of tarp cover three: the demo farm keeps three", () => {
    const farm = sized(demoSnapshot(), 50 * METRES_PER_FOOT, 4 * METRES_PER_FOOT, {
      tarpSquareMetresAtHand: 600 * METRES_PER_FOOT ** 2,
    });
    const choice = chosen(farm, solver);
    expect(choice.status === "optimal" && choice.keptBedIds).toHaveLength(3);
    expect(shortWith(farm, 3)).toEqual([]);
    expect(shortWith(farm, 4)).toEqual(["tarp"]);
    const beds = winterBeds(farm, SEASON);
    const [tarp] = winterLimits(farm.farm, beds).filter(({ resource }) => resource === "tarp");
    const met = limitMet(
      tarp,
      beds,
      beds.map((_, bed) => bed < 4),
    );
    expect([met.atHand, met.takes].map((squareMetres) => squareMetres / METRES_PER_FOOT ** 2)).toEqual([
      expect.closeTo(600, 9),
      expect.closeTo(800, 9),
    ]);
  });

  test("[K3] four beds of 12.35 by 1.15 m take 56.81 square metres: with just that the demo farm keeps four, and a hundredth less covers three", () => {
    const farm = sized(demoSnapshot(), 12.35, 1.15, { tarpSquareMetresAtHand: 56.81 });
    const choice = chosen(farm, solver);
    expect(choice.status === "optimal" && choice.keptBedIds).toHaveLength(4);
    const less = sized(farm, 12.35, 1.15, { tarpSquareMetresAtHand: 56.8 });
    expect(shortWith(farm, 4)).toEqual([]);
    expect(shortWith(less, 4)).toEqual(["tarp"]);
  });

  test("[K3] 3 beds of 200 square feet under 8 inches of leaves take 400 cubic feet, which is 400 / 27 cubic yards", () => {
    const yards = (cubicYards: number) => ({
      leafDepthMetres: 8 * 0.0254,
      leafCubicMetresAtHand: cubicYards * 0.9144 ** 3,
    });
    const farm = demoSnapshot();
    const feet = (count: number) => count * METRES_PER_FOOT;
    expect(shortWith(sized(farm, feet(50), feet(4), yards(400 / 27)), 3)).toEqual([]);
    expect(shortWith(sized(farm, feet(50), feet(4), yards(400 / 27 - 1e-9)), 3)).toEqual(["leaves"]);
  });

  test("[K3] hours are fractions: clumps at 7, 11 and 13 an hour and beds at 0.5 hours a 100 square feet fill a week to the second", () => {
    const farm = winterFarm(5, 16, 8, false);
    const hours = (hoursAtHand: number) =>
      sized(farm, 20 * METRES_PER_FOOT, 5 * METRES_PER_FOOT, {
        digClumpsPerHour: 7,
        divideClumpsPerHour: 11,
        replantTubersPerHour: 13,
        coverHoursPerSquareMetre: 0.5 / (100 * METRES_PER_FOOT ** 2),
        hoursAtHand,
      });
    const clumps = winterBeds(farm, SEASON).map(({ plantings }) =>
      plantings.reduce((sum, { dug }) => sum + dug.planting.plantCount, 0),
    );
    // Two beds covered in half an hour each, and the clumps of all others at (1/7 + 1/11 + 1/13) = 311/1001 hours.
    const dugClumps = clumps.slice(2).reduce((sum, count) => sum + count, 0);
    const exactly = (1001 + dugClumps * 311) / 1001;
    expect(shortWith(hours(exactly), 2)).toEqual([]);
    expect(shortWith(hours(exactly - 1 / 3600 / 1000), 2)).toEqual(["hours"]);
  });

  test("[K3] past every edge too: three tarps of 20.8 by 2 m are 124.8 square metres, leaves 0.25 m deep of 20.3 by 1.5 m fit to the litre, and dead clumps take hours", () => {
    const farm = demoSnapshot();
    const edges = { tarpEdgeMetres: 0.4, leafEdgeMetres: 0.15, leafSettlingShare: 0.2, leafDepthMetres: 0.2 };
    const at = (more: Partial<Snapshot["farm"]["winter"]>) => sized(farm, 20, 1.2, { ...edges, ...more });
    expect(shortWith(at({ tarpSquareMetresAtHand: 124.8 }), 3)).toEqual([]);
    expect(shortWith(at({ tarpSquareMetresAtHand: 124.79 }), 3)).toEqual(["tarp"]);
    expect(shortWith(at({ leafCubicMetresAtHand: 3 * 7.6125 }), 3)).toEqual([]);
    expect(shortWith(at({ leafCubicMetresAtHand: 3 * 7.6125 - 0.001 }), 3)).toEqual(["leaves"]);
    const rates = { leafHaulHoursPerCubicMetre: 0.5, replantDeadShare: 1, winterSurvivalShare: 0.7 };
    const beds = winterBeds(at(rates), SEASON);
    const hours = beds.reduce((sum, { keep, dig }, bed) => sum + (bed < 3 ? keep : dig).hours, 0);
    expect(shortWith(at({ ...rates, hoursAtHand: Math.ceil(hours * 1000) / 1000 }), 3)).toEqual([]);
    expect(shortWith(at({ ...rates, hoursAtHand: Math.floor(hours * 1000) / 1000 }), 3)).toEqual(["hours"]);
  });

  test("[K3] a share of the beds is rounded down to whole beds, and a share that comes to whole beds is all of them", () => {
    expect(mostBedsKept(0.29, 100)).toBe(29);
    expect(mostBedsKept(1 / 3, 12)).toBe(4);
    expect(mostBedsKept(0.5, 7)).toBe(3);
    expect(mostBedsKept(1, 5)).toBe(5);
  });
});

test("[K3] the screen goes by the rule of the choice: what it chose runs short of nothing, on 40 farms", () => {
  let limitedCount = 0;
  for (let seed = 551; seed <= 590; seed++) {
    const snapshot = winterFarm(seed, 16, 10);
    const choice = chosen(snapshot, solver);
    if (choice.status !== "optimal") continue;
    const [dug, tried] = [[], choice.keptBedIds].map((ids) => provenPlan(withKeptBeds(snapshot, SEASON, ids), SEASON));
    const { winters } = keepBoard(dug, dug, tried, choice.keptBedIds);
    expect(winters[2].runsShort, `seed ${seed}`).toEqual([]);
    if (winterLimits(snapshot.farm, winterBeds(snapshot, SEASON)).length > 0) limitedCount++;
  }
  expect(limitedCount).toBeGreaterThan(10);
});
