import { expect, test } from "vitest";
import { gammaQuantile } from "#lib/maths/gamma";
import { chanceOfAtLeast, logChanceOf } from "#lib/maths/negative-binomial";
import { normalShare } from "#lib/maths/normal";
import { seededRandom } from "#lib/maths/random";
import { plantingEvidence } from "#lib/plan/learning/season/planting-evidence";
import { plantingPosterior } from "#lib/plan/learning/season/planting-posterior";
import { DISPERSION, UNTRUSTED_SHARE, type WatchedPlanting } from "#lib/plan/learning/season/season-model";
import { seasonPosterior } from "#lib/plan/learning/season/season-posterior";
import { inventedPlanting, ownSeason, pickedToTheList } from "./invented-watch";

/** One planting, for which the whole model is two numbers: days late, normal with 7.8 days, and a gamma yield with a spread of 0.3. */
const SPREAD_DAYS = Math.hypot(6, 5);
const YIELD_SPREAD = 0.3;
const ALONE = inventedPlanting({
  ...{ id: 1, cropId: 1, firstDay: 150, sharedSpreadDays: 6, ownSpreadDays: 5, yieldSpread: YIELD_SPREAD },
  weeks: [20, 40, 40, 30, 20],
});
const SEASONS = 40;
const DAYS = Array.from({ length: 36 }, (_, at) => 141 + at);

type Believed = { readonly daysLate: number; readonly yieldFactor: number };

/** Exact Bayes by brute force: prior times likelihood, written out from [O1] and [O2] alone, summed over every fifth of a day and every tenth of a score of yield. */
function summed({ cuts, readyStems }: WatchedPlanting): Believed {
  const scores = Array.from({ length: 321 }, (_, at) => -4 + at / 40);
  const heavyScores = Array.from({ length: 81 }, (_, at) => -4 + at / 10);
  const shape = 1 / YIELD_SPREAD ** 2;
  const yields = heavyScores.map((score) => gammaQuantile(normalShare(score), shape) / shape);
  const prior = (score: number) => Math.exp(-0.5 * score * score);
  const size = 1 / DISPERSION ** 2;
  const chances = cuts.map(({ stems, says }) => {
    const logOf = logChanceOf(stems, size);
    return (mean: number) =>
      says === "at least"
        ? UNTRUSTED_SHARE + (1 - UNTRUSTED_SHARE) * chanceOfAtLeast(stems, mean, size)
        : UNTRUSTED_SHARE / 1000 + (1 - UNTRUSTED_SHARE) * Math.exp(logOf(mean));
  });
  let [all, late, heavy] = [0, 0, 0];
  scores.forEach((score) => {
    const ready = cuts.map(({ day }) => readyStems(day, score * SPREAD_DAYS));
    yields.forEach((factor, column) => {
      let weight = prior(score) * prior(heavyScores[column]);
      cuts.forEach((_, at) => {
        weight *= chances[at](ready[at] * factor);
      });
      all += weight;
      late += weight * score * SPREAD_DAYS;
      heavy += weight * factor;
    });
  });
  return { daysLate: late / all, yieldFactor: heavy / all };
}

test("[O3] over forty seasons picked to the list it errs by no more than a twentieth more than exact Bayes, and lies within a twentieth of a spread of it, in no season a tenth away", () => {
  const sums = { daysLate: { ours: 0, exact: 0, apart: 0 }, yieldFactor: { ours: 0, exact: 0, apart: 0 } };
  const spreads = { daysLate: SPREAD_DAYS, yieldFactor: YIELD_SPREAD };
  let measured = 0;
  for (let seed = 1; seed <= SEASONS; seed++) {
    const random = seededRandom(seed);
    const [truth] = ownSeason(random, [ALONE]);
    const cuts = pickedToTheList(random, ALONE, truth, DAYS.slice(0, 12 + (seed % 25)), 0.7);
    measured += cuts.filter(({ says }) => says === "all that was ready").length;
    const watched = { ...ALONE, timing: [], cuts };
    const exact = summed(watched);
    const { crops } = seasonPosterior([plantingEvidence(watched)]);
    const [believed] = crops.flatMap((crop) => crop.evidence.map((one) => plantingPosterior(one, crop)));
    for (const of of ["daysLate", "yieldFactor"] as const) {
      const apart = believed[of] - exact[of];
      expect(Math.abs(apart)).toBeLessThan(spreads[of] / 10);
      sums[of].ours += (believed[of] - truth[of]) ** 2;
      sums[of].exact += (exact[of] - truth[of]) ** 2;
      sums[of].apart += apart ** 2;
    }
  }
  expect(measured).toBeGreaterThan(SEASONS);
  for (const of of ["daysLate", "yieldFactor"] as const) {
    const { ours, exact, apart } = sums[of];
    expect(Math.sqrt(ours)).toBeLessThan(1.05 * Math.sqrt(exact));
    expect(Math.sqrt(apart / SEASONS)).toBeLessThan(spreads[of] / 20);
  }
});
