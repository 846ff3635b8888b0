import { describe, expect, test } from "vitest";
import { addDays, toDayNumber } from "#lib/domain/day";
import { furthestOff, MADE } from "#lib/plan/learning/how-true/truth";
import { forecast } from "#lib/plan/road/forecast";
import { bed, crop, curve, day, farm, monthDay, planting, snapshot } from "../../../small-farm";
import { cut, howTrue, look, numbered } from "./recorded";

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

  test("[HT2] also where another bed of the crop comes after the 1st of May", () => {
    const early = { anchor: { kind: "day-of-year", firstCut: monthDay("04-12") } as const };
    const beds = [bed({ id: 1 }), bed({ id: 2 })];
    const curves = [curve(), curve({ id: 2, plantingId: 2, varietyId: 1, ...early })];
    const plantings = [planting({ id: 1 }), planting({ id: 2, bedId: 2 })];
    const budLooks = numbered([look("2027-06-08", "first bloom"), look("2027-04-15", "first bloom", { bedId: 2 })]);
    const { said } = howTrue({ ...WEEK, beds, curves, plantings, budLooks }).all;
    expect(MADE.map((made) => said[made].timing?.daysLate)).toEqual([2, 1, 2]);
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

test("[HT2] [HT5] beside winter stand the recorded winters before, the latest three, each held against its own season", () => {
  const years = [2022, 2023, 2024, 2025, 2026, 2027];
  const late = (year: number) => addDays(day(`${year}-06-07`), year - 2022);
  const truth = howTrue({
    ...WEEK,
    plantings: years.map((year, index) =>
      planting({ id: index + 1, seasonYear: year, plantedOn: day(`${year}-05-20`) }),
    ),
    // Of 2025 nothing was recorded.
    budLooks: numbered(years.filter((year) => year !== 2025).map((year) => look(late(year), "first bloom"))),
  });
  const [{ said, wintersBefore }] = truth.crops;
  expect(said.winter.timing?.daysLate).toBe(5);
  expect(wintersBefore).toEqual([
    { season: 2026, daysLate: 4 },
    { season: 2024, daysLate: 2 },
    { season: 2023, daysLate: 1 },
  ]);
});

test("the crops of which winter was furthest off come first, three at most, and none that it told to a day", () => {
  const crops = [0.6, -9.2, 2.4, 5, -3, 1.4].map((daysLate, index) => {
    const truth = { timing: { plantingCount: 1, daysLate, mostDaysOff: 9, meanCameDay: 0 }, stems: null };
    const said = { winter: truth, spring: truth, "four weeks ahead": truth };
    return { crop: crop({ id: index + 1 }), plantingCount: 1, said, wintersBefore: [] };
  });
  expect(furthestOff(crops).map((one) => one.crop.id)).toEqual([2, 4, 5]);
  expect(furthestOff(crops.slice(0, 1))).toEqual([]);
});
