import { describe, expect, test } from "vitest";
import { Simulation } from "#lib/plan/chance/simulation";
import { forecast } from "#lib/plan/road/forecast";
import { winterFutures } from "#lib/plan/winter/futures";
import { barrenInWords } from "#lib/plan/words/barren-words";
import { crop, curve, day, planting, snapshot } from "../../small-farm";

describe("a planting far from its season", () => {
  const slip = snapshot({
    curves: [{ ...snapshot().curves[0], anchor: { kind: "days-after-planting", days: 20 } }],
    plantings: [planting({ id: 1, plantedOn: day("1927-05-20") })],
  });

  test("[F7] planted by a slip in 1927 for 2027 it gives nothing, and the plan says where and how to mend it", () => {
    const { plantings, problems } = forecast(slip, 2027);
    expect(plantings[0].openedStems).toBe(0);
    expect(problems.map(barrenInWords)).toEqual([
      {
        place: "bed B1, Crop 1 Variety 1",
        message:
          "planted on 1927-05-20 it would be cut from 1927-06-09, not in 2027: it is forecast at 0 stems. Mend the planting day or the season.",
      },
    ]);
  });

  test("[F7] it gives nothing in sampled seasons either: their stems are those of the other planting", () => {
    const both = { ...slip, plantings: [...slip.plantings, planting({ id: 2, plantedOn: day("2027-05-20") })] };
    const stemsIn = (farm: typeof slip) => {
      const { flow, giverCount } = new Simulation(farm, 2027, 1).matched(0).network;
      return [...flow.supply.slice(0, giverCount)];
    };
    expect(stemsIn(slip)).toEqual([]);
    expect(stemsIn(both).length).toBeGreaterThan(0);
    expect(stemsIn(both)).toEqual(stemsIn({ ...both, plantings: both.plantings.slice(1) }));
  });

  test("[F7] kept in the ground since 1927 it gives nothing in the choice of beds either", () => {
    const kept = snapshot({
      crops: [crop({ id: 1, overwinters: true })],
      curves: [
        curve({ id: 1, treatment: "spring-planted", anchor: { kind: "days-after-planting", days: 20 } }),
        curve({ id: 2, treatment: "kept-in-ground", anchor: { kind: "days-after-planting", days: 20 } }),
      ],
      plantings: [planting({ id: 1, plantedOn: day("1927-05-20"), treatment: "kept-in-ground" })],
    });
    const stemsOf = (isKept: boolean) =>
      winterFutures(kept, 2027)
        .match([isKept])
        .supplies.flatMap(({ stems }) => stems)
        .reduce((sum, stems) => sum + stems, 0);
    expect([stemsOf(false), stemsOf(true)]).toEqual([70, 0]);
  });
});
