import { expect, test } from "vitest";
import { forecast } from "#lib/plan/road/forecast";
import { curve, planting, snapshot } from "../../small-farm";

test("[F3] a half goes up, reckoned in whole numbers: 2,700 plantings in tenths of a stem and hundredths alive and saleable", () => {
  let halfCount = 0;
  for (const plantCount of [5, 7, 10, 15, 25, 35, 45, 50, 70])
    for (const lostHundredths of [0, 5, 10, 15, 20, 30])
      for (const aliveHundredths of [70, 75, 80, 90, 95])
        for (const tenths of [5, 11, 15, 25, 35, 42, 55, 70, 85, 100]) {
          const parts = plantCount * aliveHundredths * (100 - lostHundredths) * tenths;
          if (parts % 100_000 === 50_000) halfCount++;
          const { openedStems } = forecast(
            snapshot({
              curves: [curve({ stemsPerPlantByWeek: [tenths / 10] })],
              plantings: [
                planting({ id: 1, plantCount, aliveShare: aliveHundredths / 100, gradeOutShare: lostHundredths / 100 }),
              ],
            }),
            2027,
          ).plantings[0];
          expect(openedStems).toBe(Math.floor((parts + 50_000) / 100_000));
        }
  expect(halfCount).toBeGreaterThan(50);
});
