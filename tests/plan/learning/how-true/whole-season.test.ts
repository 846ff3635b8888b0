import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { addDays } from "#lib/domain/day";
import { forecastOfThen } from "#lib/plan/learning/how-true/forecast-of-then";
import { howTrueSteps } from "#lib/plan/learning/how-true/how-true";
import { MADE } from "#lib/plan/learning/how-true/truth";
import { forecast } from "#lib/plan/road/forecast";
import { bed, curve, day, farm, planting, snapshot } from "../../../small-farm";
import { cameAs, howTrue, look, numbered } from "./recorded";

describe("a whole season", () => {
  /** Of each crop and forecast, days late and off, and stems beyond those said. */
  const errorsOf = ({ crops }: ReturnType<typeof howTrue>, made: (typeof MADE)[number]) =>
    crops.map(({ said }) => {
      const { timing, stems } = said[made];
      return [timing?.daysLate ?? 0, timing?.mostDaysOff ?? 0, (stems?.cameStems ?? 0) - (stems?.saidStems ?? 0)];
    });
  const allThatWasReady = (stems: number) => ({ stemsCut: stems, stemsAsked: null });
  const halfOfItAsked = (stems: number) => ({ stemsCut: Math.ceil(stems / 2), stemsAsked: Math.ceil(stems / 2) });

  test("[HT5] that came as it was forecast has no error in days or in stems, in any forecast and crop", () => {
    for (const seed of [1, 2, 3])
      for (const [askedOf, followsSeason] of [
        [halfOfItAsked, true],
        [allThatWasReady, false],
      ] as const) {
        const snap = seededFarm(seed, { bedCount: 24, bookingCount: 0 });
        const came = cameAs(forecast(snap, 2027), askedOf);
        const truth = howTrue({ ...snap, ...came, farm: { ...snap.farm, followsSeason } });
        expect(truth.crops.length).toBeGreaterThan(5);
        expect(truth.all.said["four weeks ahead"].stems?.cameStems).toBeGreaterThan(500);
        for (const made of MADE) expect(errorsOf(truth, made)).toEqual(truth.crops.map(() => [0, 0, 0]));
      }
  });

  test("[HT5] [O5] cut to the last stem as forecast, four weeks ahead is off by a twentieth of a crop’s stems at most, and by no day", () => {
    for (const seed of [1, 2, 3]) {
      const snap = seededFarm(seed, { bedCount: 24, bookingCount: 0 });
      const truth = howTrue({ ...snap, ...cameAs(forecast(snap, 2027), allThatWasReady) });
      for (const made of ["winter", "spring"] as const)
        expect(errorsOf(truth, made)).toEqual(truth.crops.map(() => [0, 0, 0]));
      errorsOf(truth, "four weeks ahead").forEach(([late, off, stems], index) => {
        expect([late, off]).toEqual([0, 0]);
        const { cameStems = 0 } = truth.crops[index].said["four weeks ahead"].stems ?? {};
        expect(Math.abs(stems)).toBeLessThanOrEqual(cameStems / 20);
      });
    }
  });

  /** One crop in 24 beds, planted from the 1st of April on, two a week, 60 days to the first cut; every bed six days late. */
  const ids = Array.from({ length: 24 }, (_, index) => index + 1);
  const succession = snapshot({
    curves: [curve({ anchor: { kind: "days-after-planting", days: 60 }, stemsPerPlantByWeek: [2, 2] })],
    beds: ids.map((id) => bed({ id })),
    plantings: ids.map((id) =>
      planting({ id, bedId: id, plantedOn: addDays(day("2027-04-01"), 7 * Math.floor((id - 1) / 2)) }),
    ),
  });
  const firstCutOf = (id: number) => forecast(succession, 2027).plantings[id - 1].firstCut ?? 0;
  const late = {
    ...succession,
    budLooks: numbered(
      ids.map((id) => look(addDays(day("1970-01-01"), firstCutOf(id) + 6), "first bloom", { bedId: id })),
    ),
  };

  test("[HT5] [O5] six days late in every bed is six days in winter and in spring; four weeks ahead knows of it once the first beds have bloomed", () => {
    const { said } = howTrue(late).all;
    expect(said.winter.timing).toMatchObject({ plantingCount: 24, daysLate: 6, mostDaysOff: 6 });
    expect(said.spring.timing).toMatchObject({ plantingCount: 24, daysLate: 6 });
    expect(said["four weeks ahead"].timing?.daysLate).toBeLessThan(3.5);
    // Of the beds that bloom more than six weeks after the first, four weeks ahead is right to a day.
    for (const id of ids.slice(14)) {
      const ahead = forecastOfThen(late, 2027, firstCutOf(id) + 6 - 28).plantings[id - 1].firstCut ?? 0;
      expect(Math.abs(firstCutOf(id) + 6 - ahead)).toBeLessThanOrEqual(1);
    }
  });

  test("[HT5] where the farm does not go by what the season has shown, four weeks ahead is as late as winter", () => {
    const { said } = howTrue({ ...late, farm: farm({ followsSeason: false }) }).all;
    for (const made of MADE) expect(said[made].timing).toMatchObject({ daysLate: 6, mostDaysOff: 6 });
  });

  test("tells how many forecasts are done, and stopped it has no answer", () => {
    const steps = howTrueSteps(late, 2027);
    const told = [steps.next().value, steps.next().value];
    expect(told).toEqual([
      { doneCount: 1, ofCount: 14 },
      { doneCount: 2, ofCount: 14 },
    ]);
    expect(steps.next(true)).toEqual({ done: true, value: null });
  });
});
