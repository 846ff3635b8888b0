import { describe, expect, test } from "vitest";
import { seededFarm } from "#demo/seeded-farm";
import { addDays, toDayNumber } from "#lib/domain/day";
import { forecastOfThen } from "#lib/plan/learning/how-true/forecast-of-then";
import { howTrueSteps } from "#lib/plan/learning/how-true/how-true";
import { furthestOff, MADE } from "#lib/plan/learning/how-true/truth";
import { forecast } from "#lib/plan/road/forecast";
import { bed, crop, curve, day, farm, monthDay, planting, snapshot } from "../../../small-farm";
import { cameAs, cut, howTrue, look, numbered } from "./recorded";

/** 70 stems in the week of Monday 7 June, ten a day; cut on Monday (10), Wednesday (20), Thursday (10), Saturday (20) and Monday (10). */
const WEEK = snapshot();

describe("first cuts", () => {
  const timingOf = (given: Partial<typeof WEEK>) => howTrue({ ...WEEK, ...given }).all.said.winter.timing;

  test("[HT3] a first bloom on Thursday 10 June is three days later than the curve's 7 June, and so said every forecast", () => {
    const truth = howTrue({ ...WEEK, budLooks: numbered([look("2027-06-10", "first bloom")]) });
    for (const made of MADE)
      expect(truth.all.said[made]).toEqual({
        timing: { plantingCount: 1, daysLate: 3, mostDaysOff: 3, meanCameDay: toDayNumber(day("2027-06-10")) },
        stems: null,
      });
    expect(truth.crops.map(({ crop, plantingCount }) => [crop, plantingCount])).toEqual([
      [{ id: 1, name: "Crop 1" }, 1],
    ]);
  });

  test("[HT3] stems cut two days before the first bloom was noted: it came with them", () => {
    const budLooks = numbered([look("2027-06-10", "first bloom"), look("2027-06-14", "first bloom")]);
    const cuts = numbered([cut("2027-06-08", 0), cut("2027-06-09", 5)]);
    expect(timingOf({ budLooks, cuts })?.daysLate).toBe(2);
  });

  test("[HT3] a cut alone says only that it bloomed by then; after a record of none or a look at buds in the week before it is the first, against the first picking day", () => {
    expect(timingOf({ cuts: numbered([cut("2027-06-12", 5)]) })).toBeNull();
    expect(timingOf({ cuts: numbered([cut("2027-06-10", 0), cut("2027-06-12", 5)]) })?.daysLate).toBe(5);
    const buds = (on: string) => ({ budLooks: numbered([look(on, "buds showing")]) });
    expect(timingOf({ ...buds("2027-06-05"), cuts: numbered([cut("2027-06-12", 5)]) })?.daysLate).toBe(5);
    expect(timingOf({ ...buds("2027-06-04"), cuts: numbered([cut("2027-06-12", 5)]) })).toBeNull();
    const left = { stemsAsked: 5, restStands: true };
    expect(timingOf({ cuts: numbered([cut("2027-06-10", 0, left), cut("2027-06-12", 5)]) })).toBeNull();
  });

  test("[HT3] [H12] a first cut that is kept of the season counts where no bloom was noted; of another season, or another way of growing, it does not", () => {
    const kept = { id: 1, cropId: 1, varietyId: null, treatment: "field" as const, seasonYear: 2027, plantedOn: null };
    const firstCuts = [{ ...kept, firstCut: day("2027-06-11") }];
    expect(timingOf({ firstCuts })?.daysLate).toBe(4);
    expect(timingOf({ firstCuts, budLooks: numbered([look("2027-06-10", "first bloom")]) })?.daysLate).toBe(3);
    expect(timingOf({ firstCuts: firstCuts.map((one) => ({ ...one, seasonYear: 2026 })) })).toBeNull();
    expect(timingOf({ firstCuts: firstCuts.map((one) => ({ ...one, treatment: "tunnel" as const })) })).toBeNull();
  });

  test("[HT3] where a variety stands twice in a bed its first cut is known of neither", () => {
    const plantings = [planting({ id: 1 }), planting({ id: 2 })];
    expect(timingOf({ plantings, budLooks: numbered([look("2027-06-10", "first bloom")]) })).toBeNull();
  });

  test("[HT2] what came in April is held against winter and four weeks ahead, and not against the 1st of May", () => {
    const curves = [curve({ anchor: { kind: "day-of-year", firstCut: monthDay("04-12") } })];
    const { said } = howTrue({ ...WEEK, curves, budLooks: numbered([look("2027-04-14", "first bloom")]) }).all;
    expect(MADE.map((made) => said[made].timing?.daysLate)).toEqual([2, undefined, 2]);
  });

  test("[HT5] of ten beds two days late and one of them twenty, the mean is 3.8, and eight in ten came within two", () => {
    const ids = Array.from({ length: 10 }, (_, index) => index + 1);
    const looked = ids.map((id) => look(id === 4 ? "2027-06-27" : "2027-06-09", "first bloom", { bedId: id }));
    const timing = timingOf({
      farm: farm({ followsSeason: false }),
      beds: ids.map((id) => bed({ id })),
      plantings: ids.map((id) => planting({ id, bedId: id })),
      budLooks: numbered(looked),
    });
    expect(timing).toMatchObject({ plantingCount: 10, mostDaysOff: 2 });
    expect(timing?.daysLate).toBeCloseTo(3.8, 9);
  });
});

describe("stems", () => {
  const stemsOf = (rows: readonly ReturnType<typeof cut>[], given: Partial<typeof WEEK> = {}) =>
    howTrue({ ...WEEK, ...given, cuts: numbered(rows) }).all.said.winter.stems;

  test("[HT4] [HT5] of a list that was filled as much was said as was cut, of one that fell short as much as it asked for, of no list all that is forecast", () => {
    expect(stemsOf([cut("2027-06-09", 15, { stemsAsked: 15 })])).toMatchObject({ cameStems: 15, saidStems: 15 });
    expect(stemsOf([cut("2027-06-10", 6, { stemsAsked: 8 })])).toMatchObject({ cameStems: 6, saidStems: 8 });
    expect(stemsOf([cut("2027-06-12", 26)])).toMatchObject({ cameStems: 26, saidStems: 20 });
    // A list filled beyond what was forecast: there were at least so many.
    expect(stemsOf([cut("2027-06-10", 13, { stemsAsked: 12 })])).toMatchObject({ cameStems: 13, saidStems: 10 });
    const all = [
      cut("2027-06-09", 15, { stemsAsked: 15 }),
      cut("2027-06-10", 6, { stemsAsked: 8 }),
      cut("2027-06-12", 26),
    ];
    expect(stemsOf(all)).toEqual({ pickingCount: 3, cameStems: 47, saidStems: 43, offStems: 2 + 6 });
  });

  test("[HT4] a row that three asked for is one picking day, and a recorded none is none", () => {
    const rows = [
      cut("2027-06-10", 4, { bookingId: 1, stemsAsked: 4 }),
      cut("2027-06-10", 2, { bookingId: 2, stemsAsked: 5 }),
      cut("2027-06-09", 0, { stemsAsked: 9 }),
    ];
    expect(stemsOf(rows)).toEqual({ pickingCount: 2, cameStems: 6, saidStems: 9 + 9, offStems: 3 + 9 });
  });

  test("[HT4] days that nobody recorded, on which some was left, or that are no picking days say nothing, nor does the record after them", () => {
    expect(stemsOf([])).toBeNull();
    const left = cut("2027-06-09", 5, { stemsAsked: 20, restStands: true });
    expect(stemsOf([left, cut("2027-06-10", 25)])).toBeNull();
    expect(stemsOf([cut("2027-06-08", 5), cut("2027-06-09", 25)])).toBeNull();
    const later = [left, cut("2027-06-10", 25), cut("2027-06-12", 18)];
    expect(stemsOf(later)).toEqual({ pickingCount: 1, cameStems: 18, saidStems: 20, offStems: 2 });
  });

  test("[HT4] [F17] a fifth graded out: 60 stems of a list of 60 are 48 good ones of 56, unless they were counted", () => {
    const given = { plantings: [planting({ id: 1, plantCount: 196, gradeOutShare: 0.2 })] };
    const [said] = forecast({ ...WEEK, ...given }, 2027).plantings.map(({ cutStems }) => cutStems[1]);
    expect(said).toBe(45);
    expect(stemsOf([cut("2027-06-09", 51, { stemsAsked: 60 })], given)).toMatchObject({ cameStems: 40, saidStems: 45 });
    const counted = cut("2027-06-09", 51, { stemsAsked: 51, goodStems: 30 });
    expect(stemsOf([counted], given)).toMatchObject({ cameStems: 30, saidStems: 30 });
  });
});

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

test("the crops of which winter was furthest off come first, three at most, and none that it told to a day", () => {
  const crops = [0.6, -9.2, 2.4, 5, -3, 1.4].map((daysLate, index) => {
    const truth = { timing: { plantingCount: 1, daysLate, mostDaysOff: 9, meanCameDay: 0 }, stems: null };
    const said = { winter: truth, spring: truth, "four weeks ahead": truth };
    return { crop: crop({ id: index + 1 }), plantingCount: 1, said };
  });
  expect(furthestOff(crops).map((one) => one.crop.id)).toEqual([2, 4, 5]);
  expect(furthestOff(crops.slice(0, 1))).toEqual([]);
});
