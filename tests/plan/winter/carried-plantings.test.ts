import { describe, expect, test } from "vitest";
import { carriedPlantings, seasonBefore } from "#lib/plan/winter/carried-plantings";
import { bed, curve, day, monthDay, planting, snapshot, variety } from "../../small-farm";

const perennial = curve({ id: 1, treatment: "field", anchor: { kind: "day-of-year", firstCut: monthDay("06-07") } });
const sown = curve({ id: 2, treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 90 } });

const farmWith = (plantings: Parameters<typeof planting>[0][]) =>
  snapshot({
    curves: [perennial, sown],
    varieties: [variety({ id: 1 }), variety({ id: 2 })],
    beds: [bed({ id: 1 }), bed({ id: 2 })],
    plantings: plantings.map(planting),
  });

describe("plantings carried into another season", () => {
  test("what is planted each spring is planted again on the same day of the next year", () => {
    const farm = farmWith([{ id: 1, treatment: "spring-planted", plantedOn: day("2027-05-15") }]);
    const [carried] = carriedPlantings(farm, 2027, 2028);
    expect([carried.seasonYear, carried.plantedOn, carried.plantCount]).toEqual([2028, "2028-05-15", 70]);
  });

  test("a perennial, and what is kept in the ground, keep the day they were planted", () => {
    const farm = farmWith([
      { id: 1, treatment: "field", plantedOn: day("2024-10-01") },
      { id: 2, bedId: 2, treatment: "kept-in-ground", plantedOn: day("2026-05-15") },
    ]);
    expect(carriedPlantings(farm, 2027, 2028).map(({ plantedOn }) => plantedOn)).toEqual(["2024-10-01", "2026-05-15"]);
  });

  test("of 100 clumps kept in the ground at 70 % survival 70 go on, and a year later 49 would: losses are not made good", () => {
    const farm = farmWith([
      { id: 1, treatment: "kept-in-ground", plantedOn: day("2026-05-15"), plantCount: 100, winterSurvivalShare: 0.7 },
    ]);
    const [once] = carriedPlantings(farm, 2027, 2028);
    expect([once.plantCount, once.aliveShare]).toEqual([70, 1]);
    const again = { ...farm, plantings: [{ id: 1, ...once }] };
    expect(carriedPlantings(again, 2028, 2029)[0].plantCount).toBe(49);
  });

  test("a leap day becomes the first of March", () => {
    const farm = farmWith([{ id: 1, seasonYear: 2028, treatment: "spring-planted", plantedOn: day("2028-02-29") }]);
    expect(carriedPlantings(farm, 2028, 2029)[0].plantedOn).toBe("2029-03-01");
  });

  test("what the bed has in the other season already is left out, so that carrying over twice doubles nothing", () => {
    const farm = farmWith([
      { id: 1, treatment: "spring-planted" },
      { id: 2, varietyId: 2, treatment: "spring-planted" },
      { id: 3, treatment: "spring-planted", seasonYear: 2028 },
    ]);
    expect(carriedPlantings(farm, 2027, 2028).map(({ varietyId }) => varietyId)).toEqual([2]);
  });

  test("the season before is the latest that has plantings; before the first there is none", () => {
    const farm = farmWith([
      { id: 1, seasonYear: 2025 },
      { id: 2, seasonYear: 2027 },
    ]);
    expect([seasonBefore(farm, 2029), seasonBefore(farm, 2027), seasonBefore(farm, 2025)]).toEqual([2027, 2025, null]);
  });
});
