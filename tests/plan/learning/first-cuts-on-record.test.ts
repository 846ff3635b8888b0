import { describe, expect, test } from "vitest";
import type { FirstCut } from "#lib/domain/records/first-cut";
import { firstCutsOnRecord } from "#lib/plan/learning/first-cuts-on-record";
import { firstCutInLine, readFirstCuts } from "#lib/sheets/first-cuts-sheet";
import { curve, day, planting, snapshot, variety } from "../../small-farm";

let id = 0;
const kept = (seasonYear: number, firstCut: string, given: Partial<FirstCut> = {}): FirstCut => ({
  ...{ id: ++id, cropId: 1, varietyId: null, treatment: "field", seasonYear, plantedOn: null },
  firstCut: day(firstCut),
  ...given,
});
const bloomed = (lookedOn: string) => ({
  ...{ id: ++id, bedId: 1, varietyId: 1, sign: "first bloom" as const, daysToCut: null },
  lookedOn: day(lookedOn),
});
const FARM = {
  varieties: [variety({ id: 1 }), variety({ id: 2 })],
  plantings: [2025, 2026].map((seasonYear) =>
    planting({ id: seasonYear, seasonYear, plantedOn: day(`${seasonYear}-05-20`) }),
  ),
  budLooks: [bloomed("2025-07-20"), bloomed("2026-07-25")],
};
const PLANTED = curve({ anchor: { kind: "days-after-planting", days: 60 } });

describe("first cuts to learn from", () => {
  test("[H12] what was kept of a season stands in the place of what was noted, and what was noted of others beside it", () => {
    const farm = snapshot({ ...FARM, firstCuts: [kept(2023, "2023-06-01"), kept(2026, "2026-06-09")] });
    expect(firstCutsOnRecord(farm, curve()).map(({ firstCut }) => firstCut)).toEqual([
      "2023-06-01",
      "2025-07-20",
      "2026-06-09",
    ]);
  });

  test("[H12] a curve of days after planting is offered one for each planting day, one of a day of the year the earliest of a season", () => {
    const firstCuts = [
      kept(2024, "2024-07-19", { plantedOn: day("2024-05-18") }),
      kept(2024, "2024-08-20", { plantedOn: day("2024-06-22") }),
      kept(2026, "2026-07-22", { plantedOn: day("2026-05-20") }),
    ];
    const farm = snapshot({ ...FARM, firstCuts });
    expect(firstCutsOnRecord(farm, PLANTED).map(firstCutInLine)).toEqual([
      "2024-05-18 2024-07-19",
      "2024-06-22 2024-08-20",
      "2025-05-20 2025-07-20",
      "2026-05-20 2026-07-22",
    ]);
    expect(firstCutsOnRecord(farm, curve()).map(({ firstCut }) => firstCut)).toEqual([
      "2024-07-19",
      "2025-07-20",
      "2026-07-22",
    ]);
  });

  test("[H12] a variety's curve is offered its own alone, the crop's all of them, and neither those grown another way", () => {
    const firstCuts = [
      kept(2022, "2022-06-02"),
      kept(2023, "2023-06-03", { varietyId: 2 }),
      kept(2021, "2021-06-04", { treatment: "tunnel" }),
      kept(2020, "2020-06-05", { cropId: 9 }),
    ];
    const farm = snapshot({ ...FARM, plantings: [], firstCuts });
    const years = (varietyId: number | null) => firstCutsOnRecord(farm, curve({ varietyId })).map(({ year }) => year);
    expect(years(null)).toEqual([2022, 2023]);
    expect(years(2)).toEqual([2023]);
    expect(years(1)).toEqual([]);
  });

  test("a first cut written as a line reads back as it was, in the season of another year too", () => {
    const rows = [
      { year: 2024, firstCut: day("2024-06-01") },
      { year: 2025, firstCut: day("2024-12-20") },
      { year: 2023, plantedOn: day("2023-05-20"), firstCut: day("2023-07-20") },
      { year: 2022, plantedOn: day("2021-09-20"), firstCut: day("2021-12-20") },
    ];
    expect(readFirstCuts(rows.map(firstCutInLine).join("\n"))).toEqual({ rows, problems: [] });
  });
});
