import { describe, expect, test } from "vitest";
import type { Planting } from "#lib/domain/records/planting";
import { newlyPlantedBeds, winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { bed, crop, curve, day, monthDay, planting, snapshot, variety } from "../../small-farm";

const dahlia = crop({ id: 1, name: "Dahlia", overwinters: true, tender: true });
const zinnia = crop({ id: 2, name: "Zinnia" });
const dug = curve({ id: 1, treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 84 } });
const kept = curve({
  id: 2,
  treatment: "kept-in-ground",
  anchor: { kind: "day-of-year", firstCut: monthDay("06-21") },
});
const farmOf = (given: Parameters<typeof snapshot>[0] = {}) =>
  snapshot({
    crops: [dahlia, zinnia],
    varieties: [variety({ id: 1 }), variety({ id: 2, cropId: 2 })],
    curves: [dug, kept, curve({ id: 3, cropId: 2 })],
    beds: [bed({ id: 1 }), bed({ id: 2 }), bed({ id: 3 })],
    plantings: [
      planting({ id: 1, bedId: 1, treatment: "spring-planted" }),
      planting({ id: 2, bedId: 1, treatment: "kept-in-ground" }),
      planting({ id: 3, bedId: 2, varietyId: 2 }),
      planting({ id: 4, bedId: 3, seasonYear: 2026, treatment: "spring-planted" }),
      planting({ id: 5, bedId: 1, seasonYear: 2026, treatment: "spring-planted" }),
    ],
    ...given,
  });

describe("candidates", () => {
  test("[K1] a bed with a wintering crop is one, all its plantings together, whatever they are now; zinnias and other seasons are not", () => {
    const beds = winterBeds(farmOf(), 2027);
    expect(beds.map((row) => row.bed.id)).toEqual([1]);
    expect(beds[0].plantings.map((row) => row.dug.planting.treatment)).toEqual(["spring-planted", "spring-planted"]);
    expect(beds[0].plantings.map((row) => row.kept.planting.treatment)).toEqual(["kept-in-ground", "kept-in-ground"]);
    expect(beds[0].plantings.map((row) => [row.dug.curve?.id, row.kept.curve?.id])).toEqual([
      [1, 2],
      [1, 2],
    ]);
  });

  test("[K1] what is first planted in the season's spring stands nowhere yet: every case, told by hand", () => {
    const now = { treatment: "spring-planted", plantedOn: day("2027-05-20") } as const;
    const lastYear = { seasonYear: 2026, treatment: "spring-planted" } as const;
    const other = planting({ id: 9, bedId: 2, varietyId: 2, seasonYear: 2026 });
    const cases: readonly { readonly rows: Planting[]; readonly stands: boolean }[] = [
      { rows: [planting({ id: 1, ...now })], stands: true },
      { rows: [planting({ id: 1, ...now, ageSeasons: 1 })], stands: false },
      { rows: [planting({ id: 1, ...now, ageSeasons: 2 })], stands: true },
      { rows: [planting({ id: 1, ...now }), other], stands: false },
      { rows: [planting({ id: 1, ...now }), other, planting({ id: 2, ...lastYear })], stands: true },
      { rows: [planting({ id: 1, ...now }), planting({ id: 2, ...lastYear, bedId: 2 })], stands: false },
      { rows: [planting({ id: 1, ...now, plantedOn: day("2026-05-20") }), other], stands: true },
      { rows: [planting({ id: 1, ...now, treatment: "kept-in-ground" }), other], stands: true },
    ];
    for (const { rows, stands } of cases) {
      const farm = farmOf({ plantings: rows });
      expect(winterBeds(farm, 2027).map(({ bed: { id } }) => id)).toEqual(stands ? [1] : []);
      expect(newlyPlantedBeds(farm, 2027).map(({ id }) => id)).toEqual(stands ? [] : [1]);
    }
  });

  test("[K1] without a curve for both futures there is no candidate", () => {
    expect(winterBeds(farmOf({ curves: [dug] }), 2027)).toEqual([]);
    expect(winterBeds(farmOf({ curves: [kept] }), 2027)).toEqual([]);
  });

  test("[K1] a bed dug after years in the ground is planted again on the same day of its new season, 29 February on 1 March", () => {
    const plantedOn = (text: string) => {
      const farm = farmOf({ plantings: [planting({ id: 1, plantedOn: day(text), treatment: "kept-in-ground" })] });
      const [{ plantings }] = winterBeds(farm, 2027);
      return [plantings[0].dug.planting.plantedOn, plantings[0].kept.planting.plantedOn];
    };
    expect(plantedOn("2025-05-14")).toEqual(["2027-05-14", "2025-05-14"]);
    expect(plantedOn("2027-05-20")).toEqual(["2027-05-20", "2027-05-20"]);
    expect(plantedOn("2024-02-29")[0]).toBe("2027-03-01");
  });

  test("[K2] every flag of the bed and of its plantings forbids keeping, each once", () => {
    const flagged = farmOf({
      beds: [bed({ id: 1, flags: ["wet soil"] })],
      plantings: [
        planting({ id: 1, flags: ["virus or gall"] }),
        planting({ id: 2, flags: ["virus or gall", "too precious to risk"] }),
      ],
    });
    expect(winterBeds(flagged, 2027)[0].forbidden).toEqual(["wet soil", "virus or gall", "too precious to risk"]);
    expect(winterBeds(farmOf(), 2027)[0].forbidden).toEqual([]);
  });

  test("[K2] virus or gall of an annual in a dahlia bed forbids keeping it; that the annual is precious does not", () => {
    const withAnnual = (...flags: Planting["flags"]) =>
      farmOf({ plantings: [planting({ id: 1 }), planting({ id: 2, varietyId: 2, flags })] });
    expect(winterBeds(withAnnual("too precious to risk", "old crowded clumps"), 2027)[0].forbidden).toEqual([]);
    expect(winterBeds(withAnnual("virus or gall"), 2027)[0].forbidden).toEqual(["virus or gall"]);
  });

  test("[K1] the farm with a bed kept has the treatment of that bed's wintering plantings changed and nothing else", () => {
    const before = farmOf();
    const after = withKeptBeds(before, 2027, [1]);
    expect(after.plantings.map(({ treatment }) => treatment)).toEqual([
      "kept-in-ground",
      "kept-in-ground",
      "field",
      "spring-planted",
      "spring-planted",
    ]);
    expect(withKeptBeds(before, 2027, []).plantings.map(({ treatment }) => treatment)).toEqual([
      "spring-planted",
      "spring-planted",
      "field",
      "spring-planted",
      "spring-planted",
    ]);
    expect({ ...after, plantings: before.plantings }).toEqual(before);
  });
});
