import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readyStems } from "#lib/plan/learning/season/ready-stems";
import { forecastPlanting, frostDayOf } from "#lib/plan/road/forecast";
import { grown } from "#lib/plan/road/grown";
import { anyFarm, anySeed } from "../../any-farm";
import { loss } from "../../road/any-loss";

describe("the stems that a picking day finds ready", () => {
  it("[O1] are the forecast's cuts of a planting so many days late, but for what is rounded to whole stems", () => {
    fc.assert(
      fc.property(anyFarm, fc.integer({ min: -20, max: 20 }), (snapshot, daysLate) => {
        const frostDay = frostDayOf(snapshot.farm, 2027);
        for (const row of grown(snapshot, 2027)) {
          const ready = readyStems(row, snapshot.farm, frostDay);
          const year = { lateness: 0, heaviness: 0, daysLateOf: () => daysLate };
          const { cutDays, cutStems, curve } = forecastPlanting(row, snapshot.farm, frostDay, undefined, year);
          const weeks = curve?.stemsPerPlantByWeek.length ?? 0;
          cutDays.forEach((day, index) => {
            expect(Math.abs(ready(day, daysLate) - cutStems[index])).toBeLessThan(weeks + 2);
          });
          const all = cutDays.reduce((sum, day) => sum + ready(day, daysLate), 0);
          const cut = cutStems.reduce((sum, stems) => sum + stems, 0);
          expect(Math.abs(all - cut)).toBeLessThan(weeks + 2);
        }
      }),
      { ...anySeed, numRuns: 100 },
    );
  });

  it("[PL1] are those of the plants that are left, so that a loss is not read as a poor yield", () => {
    let fewer = 0;
    fc.assert(
      fc.property(anyFarm, fc.nat(9), (snapshot, plantsLeft) => {
        const losses = snapshot.plantings.map(({ bedId, varietyId }, index) =>
          loss({ id: index + 1, bedId, varietyId, plantsBefore: 9, plantsLeft }),
        );
        const frostDay = frostDayOf(snapshot.farm, 2027);
        for (const row of grown({ ...snapshot, losses }, 2027)) {
          const ready = readyStems(row, snapshot.farm, frostDay);
          const { cutDays, cutStems, curve } = forecastPlanting(row, snapshot.farm, frostDay);
          const weeks = curve?.stemsPerPlantByWeek.length ?? 0;
          const all = cutDays.reduce((sum, day) => sum + ready(day, 0), 0);
          const cut = cutStems.reduce((sum, stems) => sum + stems, 0);
          expect(Math.abs(all - cut)).toBeLessThan(weeks + 3);
          if (cut > 20 && plantsLeft < 9) fewer += 1;
        }
      }),
      { ...anySeed, numRuns: 100 },
    );
    expect(fewer).toBeGreaterThan(15);
  });

  it("[O1] are none on a day that is no picking day", () => {
    fc.assert(
      fc.property(anyFarm, (snapshot) => {
        const frostDay = frostDayOf(snapshot.farm, 2027);
        for (const row of grown(snapshot, 2027)) {
          const ready = readyStems(row, snapshot.farm, frostDay);
          const { cutDays, opensFrom } = forecastPlanting(row, snapshot.farm, frostDay);
          for (let day = opensFrom; day < opensFrom + 100; day++)
            if (!cutDays.includes(day)) expect(ready(day, 0)).toBeLessThan(1 + 1e-9);
        }
      }),
      { ...anySeed, numRuns: 50 },
    );
  });
});
