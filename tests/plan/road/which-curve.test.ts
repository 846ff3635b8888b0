import { describe, expect, test } from "vitest";
import type { Snapshot } from "#lib/domain/snapshot";
import { forecast, type PlantingForecast } from "#lib/plan/road/forecast";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { curve, planting, snapshot, variety } from "../../small-farm";

const grownIn = (given: Partial<Snapshot>): PlantingForecast => forecast(snapshot(given), 2027).plantings[0];

describe("which curve", () => {
  const own = curve({ id: 2, varietyId: 1, stemsPerPlantByWeek: [3] });

  test("[F7] a variety's own curve overrules its crop's: 70 plants give 210, a sister variety 70", () => {
    const { plantings } = forecast(
      snapshot({
        varieties: [variety({ id: 1 }), variety({ id: 2 })],
        curves: [own, curve()],
        plantings: [planting({ id: 1 }), planting({ id: 2, varietyId: 2 })],
      }),
      2027,
    );
    expect(plantings.map(({ openedStems }) => openedStems)).toEqual([210, 70]);
  });

  test("[F7] but only under its treatment: in a tunnel the crop's tunnel curve holds", () => {
    const curves = [own, curve(), curve({ id: 3, treatment: "tunnel", stemsPerPlantByWeek: [2] })];
    expect(grownIn({ curves, plantings: [planting({ id: 1, treatment: "tunnel" })] }).openedStems).toBe(140);
  });

  test("[F7] a planting's own curve overrules both, for it alone and as long as it is of that variety", () => {
    const ofPlanting = curve({ id: 3, varietyId: 1, plantingId: 1, stemsPerPlantByWeek: [5] });
    const openedBy = (varietyId: number) =>
      forecast(
        snapshot({
          varieties: [variety({ id: 1 }), variety({ id: 2 })],
          curves: [ofPlanting, own, curve()],
          plantings: [planting({ id: 1, varietyId }), planting({ id: 2 })],
        }),
        2027,
      ).plantings.map(({ openedStems }) => openedStems);
    expect(openedBy(1)).toEqual([350, 210]);
    expect(openedBy(2)).toEqual([70, 210]);
  });

  test("[F7] a planting without a curve gives nothing, and the plan says where and why", () => {
    const { plantings, problems } = forecast(snapshot({ plantings: [planting({ id: 1, treatment: "tunnel" })] }), 2027);
    expect([plantings[0].openedStems, plantings[0].cutDays]).toEqual([0, []]);
    expect(problems).toHaveLength(1);
    const { place, message } = barrenInWords(problems[0]);
    expect(place).toBe("bed B1, Crop 1 Variety 1");
    expect(message).toContain('no bloom curve for "tunnel"');
  });

  test("a planting of another season is not in this one's forecast", () => {
    expect(forecast(snapshot({ plantings: [planting({ id: 1, seasonYear: 2026 })] }), 2027).plantings).toEqual([]);
  });
});
