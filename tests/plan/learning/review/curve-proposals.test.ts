import { describe, expect, test } from "vitest";
import { addDays, toDay, toDayNumber } from "#lib/domain/day";
import type { BudLook } from "#lib/domain/records/bud-look";
import type { Snapshot } from "#lib/domain/snapshot";
import { type RandomSource, seededRandom } from "#lib/maths/random";
import { curveProposals, curveWith, learnedDays, learnedFactor } from "#lib/plan/learning/review/curve-proposals";
import { seasonLesson } from "#lib/plan/learning/season/season-lesson";
import { forecast } from "#lib/plan/road/forecast";
import { bed, crop, curve, day, planting, snapshot, variety } from "../../../small-farm";

const seen = (daysLate: number, timingSeen = 1) => ({ daysLate, timingSeen });
const heavy = (yieldFactor: number, yieldSeen = 1) => ({ yieldFactor, yieldSeen });

/** Three beds due on 7 June in each of three seasons; first bloom seen so many days late in the first two. */
const withLooks = (late2025: number | null, late2026: number | null): Snapshot => {
  const budLooks = [late2025, late2026].flatMap((late, season): Omit<BudLook, "id">[] =>
    late === null
      ? []
      : [1, 2, 3].map((id) => ({
          lookedOn: addDays(day(`${2025 + season}-06-07`), late),
          bedId: id,
          varietyId: 1,
          sign: "first bloom",
          daysToCut: null,
        })),
  );
  return snapshot({
    crops: [crop({ id: 1 })],
    varieties: [variety({ id: 1 })],
    curves: [curve({ stemsPerPlantByWeek: [1, 1, 1], firstCutSpreadDays: 8 })],
    beds: [1, 2, 3].map((id) => bed({ id })),
    plantings: [2025, 2026, 2027].flatMap((seasonYear, season) =>
      [1, 2, 3].map((id) =>
        planting({ id: 3 * season + id, bedId: id, seasonYear, plantedOn: day(`${seasonYear}-05-01`) }),
      ),
    ),
    budLooks: budLooks.map((look, index) => ({ id: index + 1, ...look })),
  });
};

const NOVEMBER = toDayNumber(day("2026-11-25"));
const daysOf = (farm: Snapshot, today = NOVEMBER) => curveProposals(farm, today).map(({ is }) => is);

describe("what recorded seasons teach a curve", () => {
  test("[V5] one season 8 days late moves it by 4, a second one 7 late by 5; one that was half seen counts half", () => {
    expect(learnedDays([seen(8)])).toBe(4);
    expect(learnedDays([seen(8), seen(7)])).toBe(5);
    expect(learnedDays([seen(9, 0.5)])).toBe(3);
    expect(learnedDays([])).toBe(0);
    expect(learnedFactor([heavy(0.8)])).toBeCloseTo(0.9, 12);
    expect(learnedFactor([heavy(0.7), heavy(0.7)])).toBeCloseTo(0.8, 12);
    expect(learnedFactor([])).toBe(1);
  });

  test("[V5] adding up Bayes' rule step by step says the same of days and of stems", () => {
    const random = seededRandom(11);
    for (let run = 0; run < 20; run++) {
      const seasons = Array.from({ length: 1 + Math.floor(random() * 4) }, () =>
        seen(-12 + 24 * random(), 0.2 + 0.8 * random()),
      );
      expect(learnedDays(seasons)).toBeCloseTo(daysByBayes(seasons), 3);
      const counts = seasons.map(() => heavy(Math.floor(8 + 30 * random()) / 16));
      expect(learnedFactor(counts)).toBeCloseTo(factorByBayes(counts), 3);
    }
  });

  test("[V5] three beds of which first bloom was seen 8 days late in one season teach 4 days, in two seasons 5, from the next season on", () => {
    expect(daysOf(withLooks(null, 8))).toEqual([{ fromSeason: 2027, laterDays: 4, yieldFactor: 1 }]);
    expect(daysOf(withLooks(8, 8))).toEqual([{ fromSeason: 2027, laterDays: 5, yieldFactor: 1 }]);
  });

  test("[V5] a season that is not over teaches nothing, nor does one in which nothing was seen", () => {
    expect(daysOf(withLooks(null, 8), toDayNumber(day("2026-09-01")))).toEqual([]);
    expect(daysOf(withLooks(null, null))).toEqual([]);
  });

  test("[V5] what was taken is not proposed again, and a third season weighs with the first two as if nothing had been taken", () => {
    const farm = withLooks(8, 8);
    const [proposal] = curveProposals(farm, NOVEMBER);
    const taken = { ...farm, curves: [curveWith(proposal)] };
    expect(curveProposals(taken, NOVEMBER)).toEqual([]);
    const more = (base: Snapshot) => ({
      ...base,
      budLooks: [
        ...base.budLooks,
        ...[1, 2, 3].map((id) => ({
          ...{ id: 100 + id, bedId: id, varietyId: 1, sign: "first bloom" as const, daysToCut: null },
          lookedOn: day("2027-06-21"),
        })),
      ],
    });
    const nextYear = toDayNumber(day("2027-11-25"));
    const [after] = daysOf(more(taken), nextYear);
    const [afresh] = daysOf(more(farm), nextYear);
    expect(after.fromSeason).toBe(2028);
    // Seen from a forecast that had moved already, the same looks are believed to a day.
    expect(Math.abs(after.laterDays - afresh.laterDays)).toBeLessThanOrEqual(1);
  });

  test("[F16] what is taken moves the next season by so many days and so many stems, and not a stem of the seasons before", () => {
    const farm = withLooks(8, 8);
    const learned = [{ fromSeason: 2027, laterDays: 5, yieldFactor: 0.5 }];
    const taken = { ...farm, curves: farm.curves.map((row) => ({ ...row, learned })) };
    for (const season of [2025, 2026]) expect(figuresOf(taken, season)).toEqual(figuresOf(farm, season));
    expect(forecast(farm, 2027).plantings.map((row) => [toDay(row.opensFrom), row.openedStems])).toEqual(
      [1, 2, 3].map(() => ["2027-06-07", 210]),
    );
    expect(forecast(taken, 2027).plantings.map((row) => [toDay(row.opensFrom), row.openedStems])).toEqual(
      [1, 2, 3].map(() => ["2027-06-12", 105]),
    );
    expect(seasonLesson(taken, 2026)?.crops).toEqual(seasonLesson(farm, 2026)?.crops);
  });

  test("[F16] the last that was told for the season or one before counts, in whatever order they stand", () => {
    const farm = withLooks(null, null);
    const first = { fromSeason: 2026, laterDays: 3, yieldFactor: 1 };
    const second = { fromSeason: 2027, laterDays: -2, yieldFactor: 1 };
    for (const learned of [
      [first, second],
      [second, first],
    ]) {
      const taught = { ...farm, curves: farm.curves.map((row) => ({ ...row, learned })) };
      const opensOf = (season: number) => toDay(forecast(taught, season).plantings[0].opensFrom).slice(5);
      expect([opensOf(2025), opensOf(2026), opensOf(2027)]).toEqual(["06-07", "06-10", "06-05"]);
    }
  });

  test("[V5] over invented farms whose curves are wrong, the next season is told better by what two seasons taught than by the curve, and by one season in between", () => {
    const random = seededRandom(5);
    const errors = { none: 0, one: 0, two: 0 };
    for (let farm = 0; farm < 4000; farm++) {
      const truth = 8 * normal(random);
      const [a, b, next] = [1, 2, 3].map(() => truth + 8 * normal(random));
      errors.none += next ** 2;
      errors.one += (next - learnedDays([seen(a)])) ** 2;
      errors.two += (next - learnedDays([seen(a), seen(b)])) ** 2;
    }
    expect(errors.one).toBeLessThan(0.8 * errors.none);
    expect(errors.two).toBeLessThan(0.95 * errors.one);
  });
});

const figuresOf = (farm: Snapshot, season: number) =>
  forecast(farm, season).plantings.map(({ planting: { id }, cutDays, usableStems }) => [id, cutDays, usableStems]);

const normal = (random: RandomSource): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const SPREAD = 8;

/** The curve's true days late, normal about 0 as wide as seasons vary about it; each season is seen with the error that leaves so much unseen. */
function daysByBayes(seasons: readonly ReturnType<typeof seen>[]): number {
  let weights = 0;
  let sum = 0;
  for (let mean = -80; mean <= 80; mean += 0.02) {
    let log = -0.5 * (mean / SPREAD) ** 2;
    for (const { daysLate, timingSeen } of seasons)
      log -= (0.5 * (daysLate - mean) ** 2) / (SPREAD ** 2 + (SPREAD ** 2 * (1 - timingSeen)) / timingSeen);
    weights += Math.exp(log);
    sum += mean * Math.exp(log);
  }
  return sum / weights;
}

/** The curve's true stems, gamma with mean 1 and shape 16; a season's stems are so many sixteenths of it by chance. */
function factorByBayes(seasons: readonly ReturnType<typeof heavy>[]): number {
  let weights = 0;
  let sum = 0;
  for (let mean = 0.001; mean < 6; mean += 0.001) {
    let log = 15 * Math.log(mean) - 16 * mean;
    for (const { yieldFactor } of seasons) log += 16 * yieldFactor * Math.log(mean) - 16 * mean;
    weights += Math.exp(log);
    sum += mean * Math.exp(log);
  }
  return sum / weights;
}
