import { describe, expect, test } from "vitest";
import {
  clumpCount,
  clumpsLost,
  coveringHours,
  digCost,
  diggingHours,
  dividingHours,
  freeBedCents,
  haulingHours,
  keepCost,
  leafCents,
  leafCubicMetres,
  leafDepthLaidMetres,
  replacementCents,
  replantingHours,
  storageCents,
  storageLossTubers,
  tarpCents,
  tarpSquareMetres,
  tubersGained,
  tubersGainedCents,
  tubersReplanted,
  winterSurvival,
} from "#lib/plan/winter/costs";
import { bed, farm, planting } from "../../small-farm";

/** 20 m by 1.2 m, 24 square metres; 90 clumps in two plantings. */
const wide = bed({ id: 1, lengthMetres: 20, widthMetres: 1.2 });
const rows = [planting({ id: 1, plantCount: 60 }), planting({ id: 2, plantCount: 30, winterSurvivalShare: 0.5 })];
const plain = farm();
const rates = (given: Partial<typeof plain.winter>) => farm({ winter: { ...plain.winter, ...given } });

describe("digging", () => {
  test("[K1] a clump stands for each plant: 60 and 30 plants are 90 clumps", () => {
    expect(clumpCount(rows)).toBe(90);
  });
  test("[K1] hours: 90 clumps at 30 an hour take 3 to dig, at 15 an hour 6 to divide, at 90 an hour 1 to plant again", () => {
    expect(diggingHours(90, plain)).toBe(3);
    expect(dividingHours(90, rates({ divideClumpsPerHour: 15 }))).toBe(6);
    expect(replantingHours(90, plain)).toBe(1);
  });
  test("[K1] storing 90 clumps at 40 cents costs 3,600 cents", () => {
    expect(storageCents(90, plain)).toBe(3600);
  });
  test("[K1] 100 clumps of 4 divisions lose 7.5 % of 400 in store, 30, and leave 270 over once 100 are planted again", () => {
    expect(storageLossTubers(100, plain)).toBeCloseTo(30, 9);
    expect(tubersGained(100, plain)).toBeCloseTo(270, 9);
  });
  test("[K1] of 270 tubers gained at 600 cents a tenth is wanted: 16,200 cents", () => {
    expect(tubersGainedCents(100, rates({ tubersWantedShare: 0.1 }))).toBeCloseTo(16_200, 6);
  });
  test("[K1] with one division a clump and 10 % lost, 10 of 100 must be bought, however few more are wanted", () => {
    const poor = rates({ divisionsPerClump: 1, storageLossShare: 0.1, tubersWantedShare: 0.1 });
    expect(tubersGainedCents(100, poor)).toBeCloseTo(-6000, 6);
  });
  test("[K1] a dug bed adds up: 13 hours at 2,000, 3,600 in store, less a tenth of 243 tubers at 600", () => {
    const cost = digCost(rows, rates({ divideClumpsPerHour: 10, tubersWantedShare: 0.1 }));
    expect(cost.hours).toBe(13);
    expect(cost.labourCents).toBe(26_000);
    expect(cost.materialCents).toBe(3600);
    expect(cost.replacementCents).toBe(-14_580);
    expect(cost.cents).toBe(15_020);
    expect([cost.leafCubicMetres, cost.tarpSquareMetres, cost.freeBedCents]).toEqual([0, 0, 0]);
  });
});

describe("keeping", () => {
  test("[K1] leaves: 24 square metres 0.2 m deep take 4.8 cubic metres, at 500 cents each 2,400", () => {
    expect(leafCubicMetres(wide, plain)).toBeCloseTo(4.8, 9);
    expect(leafCents(wide, rates({ leafCentsPerCubicMetre: 500 }))).toBeCloseTo(2400, 6);
  });
  test("[K1] of 10 inches laid a fifth settles and 8 stay: for 0.2 m that must stay 0.25 m are laid", () => {
    expect(leafDepthLaidMetres(rates({ leafSettlingShare: 0.2 }))).toBeCloseTo(0.25, 12);
    expect(leafDepthLaidMetres(rates({ leafDepthMetres: 8 * 0.0254, leafSettlingShare: 0.2 })) / 0.0254).toBeCloseTo(
      10,
      9,
    );
  });
  test("[K1] leaves half a metre past every edge of 20 by 1.2 m cover 21 by 2.2 m: 46.2 square metres 0.2 m deep, 9.24 cubic metres", () => {
    expect(leafCubicMetres(wide, rates({ leafEdgeMetres: 0.5 }))).toBeCloseTo(9.24, 9);
  });
  test("[K1] hauling 4.8 cubic metres of leaves at half an hour each takes 2.4 hours", () => {
    expect(haulingHours(wide, rates({ leafHaulHoursPerCubicMetre: 0.5 }))).toBeCloseTo(2.4, 9);
  });
  test("[K1] tarp: 24 square metres at 50 cents cost 1,200", () => {
    expect(tarpSquareMetres(wide, plain)).toBe(24);
    expect(tarpCents(wide, plain)).toBe(1200);
  });
  test("[K1] tarp 0.4 m past every edge of 20 by 1.2 m covers 20.8 by 2 m, 41.6 square metres, at 50 cents 2,080", () => {
    const edged = rates({ tarpEdgeMetres: 0.4 });
    expect(tarpSquareMetres(wide, edged)).toBeCloseTo(41.6, 9);
    expect(tarpCents(wide, edged)).toBeCloseTo(2080, 6);
  });
  test("[K1] covering and uncovering at 0.1 hours a square metre take 2.4 hours", () => {
    expect(coveringHours(wide, rates({ coverHoursPerSquareMetre: 0.1 }))).toBeCloseTo(2.4, 9);
  });
  test("[K1] winter loss: a fifth of 60 clumps and half of 30 die, 27, all replanted at 600 cents 16,200, a third of them 5,400, none nothing", () => {
    expect(winterSurvival(rows[0], plain)).toBe(0.8);
    expect(winterSurvival(rows[1], plain)).toBe(0.5);
    expect(clumpsLost(rows, plain)).toBeCloseTo(27, 9);
    expect(tubersReplanted(rows, rates({ replantDeadShare: 1 }))).toBeCloseTo(27, 9);
    expect(replacementCents(rows, rates({ replantDeadShare: 1 }))).toBeCloseTo(16_200, 6);
    expect(replacementCents(rows, rates({ replantDeadShare: 1 / 3 }))).toBeCloseTo(5400, 6);
    expect(replacementCents(rows, plain)).toBe(0);
  });
  test("[K1] a bed that would be free in spring, 24 square metres at 150 cents, is 3,600 cents against keeping it", () => {
    expect(freeBedCents(wide, rates({ freeBedCentsPerSquareMetre: 150 }))).toBe(3600);
  });
  test("[K1] a kept bed adds up: 2.4 hours of covering, 2.4 of hauling and 0.3 of replanting at 2,000, tarp 1,200, 27 clumps at 600, the spring crop 3,600", () => {
    const cost = keepCost(
      wide,
      rows,
      rates({
        ...{ coverHoursPerSquareMetre: 0.1, leafHaulHoursPerCubicMetre: 0.5, replantDeadShare: 1 },
        freeBedCentsPerSquareMetre: 150,
      }),
    );
    expect(cost.hours).toBeCloseTo(5.1, 9);
    expect(cost.labourCents).toBe(10_200);
    expect(cost.materialCents).toBe(1200);
    expect(cost.replacementCents).toBe(16_200);
    expect(cost.freeBedCents).toBe(3600);
    expect(cost.cents).toBe(31_200);
    expect(cost.leafCubicMetres).toBeCloseTo(4.8, 9);
    expect(cost.tarpSquareMetres).toBe(24);
  });
  test("[K1] each kind of money is rounded once, so that the parts always make up the whole", () => {
    for (let clumps = 1; clumps < 60; clumps++) {
      const cost = keepCost(wide, [planting({ id: 1, plantCount: clumps, winterSurvivalShare: 0.777 })], plain);
      const { labourCents, materialCents, replacementCents: bought, freeBedCents: free } = cost;
      expect(labourCents + materialCents + bought + free).toBe(cost.cents);
      expect([labourCents, materialCents, bought, free].every(Number.isInteger)).toBe(true);
    }
  });
});
