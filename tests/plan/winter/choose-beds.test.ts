import { beforeAll, describe, expect, test } from "vitest";
import { LARGE, seededFarm, TYPICAL } from "#demo/seeded-farm";
import { checkFlow } from "#lib/maths/check-flow";
import type { LinearSolver } from "#lib/maths/linear-programme";
import { loadLinearSolver } from "#lib/maths/linear-programme";
import { checkMatch } from "#lib/plan/road/match";
import { withKeptBeds } from "#lib/plan/winter/beds";
import { checkChoice } from "#lib/plan/winter/check-choice";
import { chooseBeds, provenChoice, type WinterChoice } from "#lib/plan/winter/choose-beds";
import { type WinterFutures, winterFutures } from "#lib/plan/winter/futures";
import { winterSeason } from "#lib/plan/winter/season";
import { highs } from "../../least-cost";
import { provenPlan } from "../../proven-plan";
import { chosen } from "./chosen";
import { allowedChoices, costOf, SEASON, winterFarm, withinLimits } from "./farm";
import { wholeProgrammeCents } from "./programme";

let solver: LinearSolver;
beforeAll(async () => {
  solver = await loadLinearSolver();
});

const proven = (choice: WinterChoice) => {
  if (choice.status !== "optimal") throw new RangeError(`the choice must be optimal, got ${choice.status}`);
  return choice;
};

/** The least cost over every subset that keeps to flags and limits; Infinity when none does. */
const leastByTrying = (futures: WinterFutures): number =>
  allowedChoices(futures).reduce((least, isKept) => Math.min(least, costOf(futures, isKept)), Number.POSITIVE_INFINITY);

describe("the choice", () => {
  test("[K4] on 120 invented farms it costs what the best of all subsets costs, to the cent", () => {
    let infeasibleCount = 0;
    let keptCount = 0;
    for (let seed = 1; seed <= 120; seed++) {
      const snapshot = winterFarm(seed, seed % 20 === 0 ? 22 : 14, 6 + (seed % 12));
      const futures = winterFutures(snapshot, SEASON);
      const least = leastByTrying(futures);
      const choice = chosen(snapshot, solver);
      if (choice.status === "infeasible") {
        expect(least, `seed ${seed}`).toBe(Number.POSITIVE_INFINITY);
        expect(choice.because.length).toBeGreaterThan(0);
        infeasibleCount++;
        continue;
      }
      expect(proven(choice).totalCents, `seed ${seed}`).toBe(least);
      expect(proven(choice).boundCents).toBe(least);
      keptCount += proven(choice).keptBedIds.length;
    }
    expect(infeasibleCount).toBeGreaterThan(3);
    expect(keptCount).toBeGreaterThan(50);
  });

  test("[K4] it costs what HiGHS finds for flow and beds in one programme: four farms of 12 to 42 beds", async () => {
    for (const [seed, beds, bookings] of [
      [201, 24, 18],
      [202, 40, 30],
      [203, 50, 40],
      [204, 80, 60],
    ]) {
      const snapshot = winterFarm(seed, beds, bookings, false);
      const choice = proven(chosen(snapshot, solver));
      const whole = wholeProgrammeCents(await highs, winterFutures(snapshot, SEASON));
      expect(Math.abs(choice.totalCents - whole), `seed ${seed}`).toBeLessThan(0.5);
    }
  });

  test("[K4] its money adds up, and its match is proven: 30 farms", () => {
    for (let seed = 301; seed <= 330; seed++) {
      const snapshot = winterFarm(seed, 30, 20, false);
      const futures = winterFutures(snapshot, SEASON);
      const choice = proven(chosen(snapshot, solver));
      const { labourCents, materialCents, replacementCents, freeBedCents, winterCents } = choice;
      expect(labourCents + materialCents + replacementCents + freeBedCents).toBe(winterCents);
      expect(choice.buyInCents + choice.fitCents + winterCents).toBe(choice.totalCents);
      expect([choice.brokenStems, choice.brokenCents]).toEqual([0, 0]);
      const isKept = futures.beds.map(({ bed }) => choice.keptBedIds.includes(bed.id));
      const match = futures.match(isKept);
      expect(checkMatch(match)).toEqual([]);
      expect(match.solution.totalCost).toBe(choice.buyInCents + choice.fitCents);
      expect(costOf(futures, isKept)).toBe(choice.totalCents);
      const shortFocal = match.needs.map(({ role }, need) => (role === "focal" ? match.shortStems[need] : 0));
      expect(shortFocal.reduce((sum, stems) => sum + stems, 0)).toBe(choice.focalShortStems);
    }
  });

  test("[K4] a plan of the farm with those beds kept cuts the same stems as the choice reckoned with", () => {
    for (let seed = 301; seed <= 320; seed++) {
      const snapshot = winterFarm(seed, 30, 20, false);
      const futures = winterFutures(snapshot, SEASON);
      const { keptBedIds } = proven(chosen(snapshot, solver));
      const reckoned = futures.match(futures.beds.map(({ bed }) => keptBedIds.includes(bed.id)));
      const planned = provenPlan(withKeptBeds(snapshot, SEASON, keptBedIds), SEASON);
      const cuts = ({ supplies }: typeof reckoned) =>
        supplies.flatMap(({ variety, days, stems }) =>
          days.flatMap((cutDay, index) => (stems[index] > 0 ? [`${variety.id}/${cutDay}/${stems[index]}`] : [])),
        );
      expect(cuts(reckoned)).toEqual(cuts(planned.match));
      expect(reckoned.needs.map(({ stems }) => stems)).toEqual(planned.match.needs.map(({ stems }) => stems));
    }
  });

  test("[K4] a season without a candidate has nothing to choose, and costs its match", () => {
    const snapshot = { ...winterFarm(1, 14, 8), curves: [] };
    const choice = proven(chosen(snapshot, solver));
    expect(choice.keptBedIds).toEqual([]);
    expect(choice.winterCents).toBe(0);
    expect(choice.totalCents).toBe(provenPlan(snapshot, SEASON).match.solution.totalCost);
    const flagged = { ...winterFarm(1, 14, 8, false) };
    const beds = flagged.beds.map((bed) => ({ ...bed, flags: ["wanted for something else" as const] }));
    expect(proven(chosen({ ...flagged, beds }, solver)).keptBedIds).toEqual([]);
    const winter = { ...flagged.farm.winter, hoursAtHand: 0 };
    const noHours = { ...flagged, beds, farm: { ...flagged.farm, winter } };
    expect(chosen(noHours, solver).status).toBe("infeasible");
  });

  test("[K4] the two futures' network proves itself at every mix of them: 20 farms, 8 mixes", () => {
    for (let seed = 401; seed <= 420; seed++) {
      const { network, beds, match } = winterFutures(winterFarm(seed, 16, 10), SEASON);
      for (let mix = 0; mix < 8; mix++) {
        const { network: mixed, solution } = match(beds.map((_, bed) => ((bed + mix) * (mix + 3)) % 3 === 0));
        expect(checkFlow(mixed.flow, solution)).toEqual([]);
        expect(mixed.flow.arcCount).toBe(network.flow.arcCount);
      }
    }
  });
});

describe("flags and limits", () => {
  test("[K2] [K3] no flagged bed is kept and no limit is passed, on 50 farms", () => {
    for (let seed = 501; seed <= 550; seed++) {
      const snapshot = winterFarm(seed, 24, 16);
      const choice = chosen(snapshot, solver);
      if (choice.status === "infeasible") continue;
      const futures = winterFutures(snapshot, SEASON);
      const isKept = futures.beds.map(({ bed }) => proven(choice).keptBedIds.includes(bed.id));
      expect(futures.beds.some(({ forbidden }, bed) => isKept[bed] && forbidden.length > 0)).toBe(false);
      expect(withinLimits(futures, isKept), `seed ${seed}`).toBe(true);
    }
  });

  test("[K3] with no hours at hand nothing keeps to the limits, and the hours are named", () => {
    const snapshot = winterFarm(7, 16, 8, false);
    const winter = { ...snapshot.farm.winter, hoursAtHand: 0.5 };
    const choice = chosen({ ...snapshot, farm: { ...snapshot.farm, winter } }, solver);
    const because = [{ resource: "hours", atHand: 0.5, takes: expect.any(Number) }];
    expect(choice).toEqual({ status: "infeasible", because });
  });

  test("[K3] a share of no beds keeps none; a share of half keeps at most half of the candidates", () => {
    const snapshot = winterFarm(204, 80, 60, false);
    const keptWith = (keepShareAtMost: number) => {
      const farm = { ...snapshot.farm, winter: { ...snapshot.farm.winter, keepShareAtMost } };
      return proven(chosen({ ...snapshot, farm }, solver)).keptBedIds.length;
    };
    const free = proven(chosen(snapshot, solver)).keptBedIds.length;
    expect(keptWith(0)).toBe(0);
    expect(keptWith(0.05)).toBe(Math.min(free, Math.floor(0.05 * winterFutures(snapshot, SEASON).beds.length)));
  });
});

describe("stopping", () => {
  test("[K4] wherever it is stopped, the bound is no more than the optimum and the best no less: 8 farms", () => {
    let stoppedCount = 0;
    for (let seed = 601; seed <= 608; seed++) {
      const snapshot = winterFarm(seed, 60, 45);
      const end = chosen(snapshot, solver);
      if (end.status === "infeasible") continue;
      const optimum = proven(end).totalCents;
      for (const steps of [0, 1, 3, 8, 20]) {
        const season = winterSeason(snapshot, SEASON);
        const choosing = provenChoice(season, solver);
        let step = choosing.next();
        for (let done = 0; done < steps && !step.done; done++) {
          expect(step.value.boundCents).toBeLessThanOrEqual(optimum);
          expect(step.value.bestCents ?? optimum).toBeGreaterThanOrEqual(optimum);
          step = choosing.next();
        }
        if (!step.done) step = choosing.next(true);
        if (!step.done) throw new RangeError("a stop must end the choice");
        expect(checkChoice(season, step.value), `seed ${seed}, ${steps} steps`).toEqual([]);
        const { choice } = step.value;
        if (choice.status !== "infeasible") expect(choice.boundCents).toBeLessThanOrEqual(optimum);
        if (choice.status === "stopped") {
          stoppedCount++;
          expect(choice.totalCents).toBeGreaterThanOrEqual(optimum);
          const futures = winterFutures(snapshot, SEASON);
          const isKept = futures.beds.map(({ bed }) => choice.keptBedIds.includes(bed.id));
          expect(withinLimits(futures, isKept)).toBe(true);
        }
      }
    }
    expect(stoppedCount).toBeGreaterThan(12);
  });

  test("[K4] the bound only rises and the best only falls, on a typical and a large farm", () => {
    for (const size of [TYPICAL, LARGE]) {
      const choosing = chooseBeds(seededFarm(11, size, SEASON), SEASON, solver);
      let lastBound = Number.NEGATIVE_INFINITY;
      let lastBest = Number.POSITIVE_INFINITY;
      let step = choosing.next();
      for (let done = 0; done < 40 && !step.done; done++) {
        const { boundCents, bestCents } = step.value;
        expect(boundCents).toBeGreaterThanOrEqual(lastBound);
        expect(bestCents ?? lastBest).toBeLessThanOrEqual(lastBest);
        lastBound = boundCents;
        lastBest = bestCents ?? lastBest;
        step = choosing.next();
      }
      choosing.return({ status: "stopped early", boundCents: lastBound });
    }
  });
});
