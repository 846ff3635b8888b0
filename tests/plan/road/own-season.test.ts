import fc from "fast-check";
import { expect, test } from "vitest";
import { toDay } from "#lib/domain/day";
import { forecast } from "#lib/plan/road/forecast";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { curve, day, planting, snapshot } from "../../small-farm";
import { anyFarm, anySeed } from "../any-farm";

test("[F15] 70 stems from 7 June, said to be six days late and a tenth short, are 63 from 13 June, this season alone", () => {
  const said = planting({ id: 1, daysLate: 6, yieldFactor: 0.9 });
  const next = planting({ id: 2, seasonYear: 2028, plantedOn: day("2028-05-20") });
  const farm = snapshot({ plantings: [said, next], curves: [curve({ stemsPerPlantByWeek: [1] })] });
  const [late] = forecast(farm, 2027).plantings;
  expect([toDay(late.opensFrom), late.openedStems]).toEqual(["2027-06-13", 63]);
  const [asEver] = forecast(farm, 2028).plantings;
  expect([toDay(asEver.opensFrom), asEver.openedStems]).toEqual(["2028-06-07", 70]);
  expect(carriedPlantings({ ...farm, plantings: [said] }, 2027, 2028)[0]).toMatchObject({
    ...{ seasonYear: 2028, daysLate: null, yieldFactor: null },
  });
});

test("[F15] over any farm a planting said to be so late and so heavy gives, stem for stem, what a curve of its own so moved and so scaled gives", () => {
  const some = fc.record({
    snap: anyFarm,
    daysLate: fc.integer({ min: -20, max: 20 }),
    // Quarters are exact in floating point, so that the order in which they are multiplied moves no stem.
    yieldFactor: fc.integer({ min: 0, max: 8 }).map((quarters) => quarters / 4),
  });
  let told = 0;
  fc.assert(
    fc.property(some, ({ snap, daysLate, yieldFactor }) => {
      const said = { ...snap, plantings: snap.plantings.map((row) => ({ ...row, daysLate, yieldFactor })) };
      const moved = {
        ...snap,
        curves: snap.curves.map((row) => ({
          ...row,
          laterDays: row.laterDays + daysLate,
          stemsPerPlantByWeek: row.stemsPerPlantByWeek.map((stems) => stems * yieldFactor),
        })),
      };
      const figures = (farm: typeof snap) =>
        forecast(farm, 2027).plantings.map((row) => [
          row.planting.id,
          row.openedStems > 0 ? row.opensFrom : null,
          row.cutDays,
          row.usableStems,
          row.lostInFieldStems,
          row.lostToFrostStems,
        ]);
      expect(figures(said)).toEqual(figures(moved));
      told += forecast(said, 2027).plantings.filter(({ openedStems }) => openedStems > 0).length;
    }),
    { ...anySeed, numRuns: 150 },
  );
  expect(told).toBeGreaterThan(100);
});
