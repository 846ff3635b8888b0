import { describe, expect, test } from "vitest";
import { forecast } from "#lib/plan/road/forecast";
import { day, planting, snapshot } from "../../small-farm";

describe("a planting far from its season", () => {
  test("[F7] planted by a slip in 1927 for 2027 it gives nothing, and the plan says where and how to mend it", () => {
    const slip = snapshot({
      curves: [{ ...snapshot().curves[0], anchor: { kind: "days-after-planting", days: 20 } }],
      plantings: [planting({ id: 1, plantedOn: day("1927-05-20") })],
    });
    const { plantings, problems } = forecast(slip, 2027);
    expect(plantings[0].openedStems).toBe(0);
    expect(problems).toEqual([
      {
        place: "bed B1, Crop 1 Variety 1",
        message:
          "planted on 1927-05-20 it would be cut from 1927-06-09, not in 2027: it is forecast at 0 stems. Mend the planting day or the season.",
      },
    ]);
  });
});
