import { beforeAll, describe, expect, test } from "vitest";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { loadLinearSolver } from "#lib/maths/linear-programme";
import { finished } from "#lib/plan/winter/choose-beds";
import { keepCost } from "#lib/plan/winter/costs";
import { type CurvePoint, keepCurve } from "#lib/plan/winter/keep-curve";
import { winterSeason } from "#lib/plan/winter/season";
import { type SweptBy, sweepKept } from "#lib/plan/winter/sweep";
import { bedVerdicts } from "#lib/plan/winter/verdicts";
import { chosen } from "./chosen";
import { allowedChoices, costOf, SEASON, winterFarm } from "./farm";
import { curveFaults } from "./proven-questions";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

const countOf = (isKept: readonly boolean[]) => isKept.filter(Boolean).length;

/** Where several points are one choice, that of the most beds: what bounds its cost bounds theirs. */
const lastOfEachChoice = (points: readonly CurvePoint[]) =>
  points.filter(({ chosen }, index) => chosen !== points[index + 1]?.chosen);

describe("the curve", () => {
  test("[K6] on 30 farms each point costs what the best subset of at most so many beds costs", () => {
    for (let seed = 801; seed <= 830; seed++) {
      const season = winterSeason(winterFarm(seed, 14, 10), SEASON);
      const tried = allowedChoices(season.futures).map((isKept) => ({
        cents: costOf(season.futures, isKept),
        count: countOf(isKept),
      }));
      const points = finished(keepCurve(season, solver));
      expect(points).toHaveLength(season.openBeds.length + 1);
      expect(lastOfEachChoice(points).flatMap((point) => curveFaults(season, solver, point))).toEqual([]);
      for (const { atMostCount, chosen, status, boundCents } of points) {
        const least = tried
          .filter(({ count }) => count <= atMostCount)
          .reduce((most, { cents }) => Math.min(most, cents), Number.POSITIVE_INFINITY);
        expect(chosen?.totalCents ?? Number.POSITIVE_INFINITY, `seed ${seed}, at most ${atMostCount}`).toBe(least);
        expect(status).toBe(chosen ? "optimal" : "infeasible");
        if (chosen) expect(boundCents).toBe(least);
      }
    }
  });

  test("[K6] it never rises, never keeps more than it may, and ends at the best choice of all: 4 farms of about 30 beds", () => {
    for (let seed = 851; seed <= 854; seed++) {
      const snapshot = winterFarm(seed, 60, 45, false);
      const season = winterSeason(snapshot, SEASON);
      const points = finished(keepCurve(season, solver));
      const cents = points.map(({ chosen }) => chosen?.totalCents ?? Number.POSITIVE_INFINITY);
      expect(cents.every((cost, index) => index === 0 || cost <= cents[index - 1])).toBe(true);
      expect(points.every(({ chosen, atMostCount }) => (chosen?.keptBedIds.length ?? 0) <= atMostCount)).toBe(true);
      expect(lastOfEachChoice(points).flatMap((point) => curveFaults(season, solver, point))).toEqual([]);
      const choice = chosen(snapshot, solver);
      expect(choice.status === "optimal" && choice.totalCents).toBe(cents.at(-1));
    }
  });

  test("[K6] stopped, it gives the points that are done", () => {
    const season = winterSeason(winterFarm(851, 60, 45, false), SEASON);
    const whole = finished(keepCurve(season, solver));
    const drawing = keepCurve(winterSeason(winterFarm(851, 60, 45, false), SEASON), solver);
    let step = drawing.next();
    while (!step.done && step.value.doneCount < 2) step = drawing.next();
    if (!step.done) step = drawing.next(true);
    if (!step.done) throw new RangeError("a stop must end the curve");
    expect(step.value.length).toBeGreaterThanOrEqual(2);
    expect(step.value.map(({ chosen }) => chosen?.totalCents)).toEqual(
      whole.slice(0, step.value.length).map(({ chosen }) => chosen?.totalCents),
    );
  });
});

describe("bed by bed", () => {
  test("[K8] worth is what the plan would lose, found cold, and in a best choice no open bed that breaks no limit is worth less than nothing", () => {
    for (let seed = 901; seed <= 915; seed++) {
      const snapshot = winterFarm(seed, 24, 16);
      const season = winterSeason(snapshot, SEASON);
      const choice = chosen(snapshot, solver, season);
      if (choice.status !== "optimal") continue;
      const verdicts = [...bedVerdicts(season, choice.keptBedIds)];
      const isKept = verdicts.map((row) => row.isKept);
      const now = costOf(season.futures, isKept);
      verdicts.forEach((row, bed) => {
        expect(row.worthCents, `seed ${seed}, bed ${bed}`).toBe(
          costOf(season.futures, isKept.with(bed, !isKept[bed])) - now,
        );
        const saves = row.dig.cents + row.matchCents.dug - row.keep.cents - row.matchCents.kept;
        expect(row.isKept ? saves : -saves + 0).toBe(row.worthCents);
        if (row.forbidden.length === 0 && row.wouldBreak.length === 0) expect(row.worthCents).toBeGreaterThanOrEqual(0);
        expect(row.weeks.reduce((sum, { focalStems }) => sum + focalStems, 0)).toBe(row.focalStems);
      });
    }
  });

  test("[K8] at the break-even survival keeping costs what digging costs: dearer just below it, no dearer at it", () => {
    let foundCount = 0;
    for (let seed = 931; seed <= 945; seed++) {
      const season = winterSeason(winterFarm(seed, 20, 14, false), SEASON);
      const { beds, effectAt, snapshot } = season.futures;
      [...bedVerdicts(season, [])].forEach(({ breakEvenShare, plantings, bed: { id } }, bed) => {
        const cents = (share: number) => {
          const isKept = beds.map((_, index) => index === bed);
          const rows = plantings.map(({ kept }) => ({ ...kept.planting, winterSurvivalShare: share }));
          return (
            season.flowOf(isKept, { bed, effect: effectAt(bed, share) }).totalCost +
            keepCost(beds[bed].bed, rows, snapshot.farm).cents
          );
        };
        const digCents = season.flowOf(beds.map(() => false)).totalCost + beds[bed].dig.cents;
        if (breakEvenShare === null) {
          expect(cents(0) <= digCents || cents(1) > digCents, `seed ${seed}, bed ${id}`).toBe(true);
          return;
        }
        foundCount++;
        expect(cents(breakEvenShare)).toBeLessThanOrEqual(digCents);
        expect(cents(Math.max(0, breakEvenShare - 2 ** -10))).toBeGreaterThan(digCents);
      });
    }
    expect(foundCount).toBeGreaterThan(20);
  });

  test("[K8] a bed that is no candidate, or has a flag, cannot be asked for as kept", () => {
    const season = winterSeason(winterFarm(931, 20, 14), SEASON);
    expect(() => [...bedVerdicts(season, [1])]).toThrow(RangeError);
  });
});

describe("the sweep of survival", () => {
  const snapshot = winterFarm(204, 60, 45, false);
  const centsOf = (by: SweptBy, values: readonly number[]) =>
    finished(sweepKept(snapshot, SEASON, solver, by, values)).map(({ choice }) => {
      if (choice.status !== "optimal") throw new RangeError(`expected optimal, got ${choice.status}`);
      return choice.totalCents;
    });

  test("[K7] each point is the choice of the farm with that survival, and living clumps never make the plan dearer by more than rounding", () => {
    const { farm, plantings } = snapshot;
    const shares = [0.2, 0.5, 0.7, 0.8, 0.9, 1];
    const cents = centsOf("survival", shares);
    shares.forEach((winterSurvivalShare, index) => {
      const winter = { ...farm.winter, winterSurvivalShare };
      const other = {
        ...snapshot,
        farm: { ...farm, winter },
        plantings: plantings.map((row) => ({ ...row, winterSurvivalShare: null })),
      };
      const again = chosen(other, solver);
      expect(again.status === "optimal" && again.totalCents).toBe(cents[index]);
    });
    expect(cents.every((cost, index) => index === 0 || cost < cents[index - 1] + 100)).toBe(true);
    expect(cents[0]).toBeGreaterThan(cents[5]);
  });

  test("[K7] each point is the choice of the farm whose kept curves begin so many days later, and replanted beds stay as they are", () => {
    const cents = centsOf("first cut", [-14, 0, 21]);
    [-14, 0, 21].forEach((laterDays, index) => {
      const curves = snapshot.curves.map((curve) =>
        curve.treatment === "kept-in-ground" ? { ...curve, laterDays } : curve,
      );
      const again = chosen({ ...snapshot, curves }, solver);
      expect(again.status === "optimal" && again.totalCents).toBe(cents[index]);
    });
    expect(new Set(cents).size).toBe(3);
  });

  test("[K7] each point is the choice of the farm whose kept beds give that part of the stems; fewer stems never make the plan cheaper by more than rounding", () => {
    const factors = [0.4, 0.7, 1];
    const cents = centsOf("stems", factors);
    factors.forEach((factor, index) => {
      const curves = snapshot.curves.map((curve) =>
        curve.treatment === "kept-in-ground"
          ? { ...curve, stemsPerPlantByWeek: curve.stemsPerPlantByWeek.map((stems) => stems * factor) }
          : curve,
      );
      const again = chosen({ ...snapshot, curves }, solver);
      expect(again.status === "optimal" && again.totalCents).toBe(cents[index]);
    });
    expect(cents[0]).toBeGreaterThan(cents[1] - 100);
    expect(cents[1]).toBeGreaterThan(cents[2] - 100);
  });

  test("[K7] a value that the number cannot have is refused, and a stop gives the points that are done", () => {
    expect(() => finished(sweepKept(snapshot, SEASON, solver, "survival", [1.2]))).toThrow(RangeError);
    expect(() => finished(sweepKept(snapshot, SEASON, solver, "first cut", [0.5]))).toThrow(RangeError);
    expect(() => finished(sweepKept(snapshot, SEASON, solver, "stems", [-1]))).toThrow(RangeError);
    const sweeping = sweepKept(snapshot, SEASON, solver, "survival", [0.5, 0.9]);
    sweeping.next();
    const end = sweeping.next(true);
    expect(end).toEqual({ done: true, value: [] });
  });
});
