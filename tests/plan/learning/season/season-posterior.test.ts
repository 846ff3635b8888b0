import { describe, expect, it } from "vitest";
import { normalShare } from "#lib/maths/normal";
import { seededRandom } from "#lib/maths/random";
import { cutEvidence } from "#lib/plan/learning/season/cut-evidence";
import { plantingEvidence } from "#lib/plan/learning/season/planting-evidence";
import { plantingPosterior } from "#lib/plan/learning/season/planting-posterior";
import type { WatchedPlanting } from "#lib/plan/learning/season/season-model";
import { seasonPosterior } from "#lib/plan/learning/season/season-posterior";
import { inventedPlanting, ownSeason, pickedToTheList } from "./invented-watch";

const planting = (id: number, cropId: number, firstDay: number) =>
  inventedPlanting({
    id,
    cropId,
    firstDay,
    sharedSpreadDays: 6,
    ownSpreadDays: 5,
    yieldSpread: 0.3,
    weeks: [20, 40, 40, 30, 20],
  });

const learned = (watched: readonly WatchedPlanting[]) => {
  const { crops } = seasonPosterior(watched.map(plantingEvidence));
  return crops
    .flatMap((crop) => crop.evidence.map((one) => plantingPosterior(one, crop)))
    .sort((a, b) => a.plantingId - b.plantingId);
};

const THREE = [planting(1, 1, 150), planting(2, 1, 157), planting(3, 2, 150)];

describe("what is seen of a season", () => {
  it("[O3] says nothing while nothing was seen: days late 0 and the yield as expected, with their spreads", () => {
    for (const one of learned(THREE.map((row) => ({ ...row, timing: [], cuts: [] })))) {
      expect(one.daysLate).toBeCloseTo(0, 9);
      expect(one.daysLateSpread).toBeCloseTo(Math.hypot(6, 5), 1);
      expect(one.yieldFactor).toBeCloseTo(1, 2);
      expect(one.yieldFactorSpread).toBeCloseTo(0.3, 1);
    }
  });

  it("[O3] a first cut seen 8 days late is believed so, its crop mostly, another crop a little", () => {
    const [seen, same, other] = learned(
      THREE.map((row) => ({
        ...row,
        cuts: [],
        timing: row.id === 1 ? [{ says: "came", daysLate: 8, spreadDays: 0.5 }] : [],
      })),
    );
    // Gaussian, by hand: variance 36 + 25 = 61 days², of the look 0.25. Shared by the crop 36; by crops 0.6 × 36 = 21.6.
    expect(seen.daysLate).toBeCloseTo((8 * 61) / 61.25, 1);
    expect(same.daysLate).toBeCloseTo((8 * 36) / 61.25, 1);
    expect(other.daysLate).toBeCloseTo((8 * 21.6) / 61.25, 1);
  });

  it("[O3] is what exact Bayes believes: 300,000 seasons drawn from the model and weighed by what was seen", () => {
    for (const seed of [1, 2]) {
      const random = seededRandom(seed);
      const truth = ownSeason(random, THREE);
      const watched = THREE.map((row, index) => ({
        ...row,
        timing:
          index === 2 && seed % 2 === 0
            ? [{ says: "not yet" as const, daysLate: truth[2].daysLate - 3, spreadDays: 1 }]
            : [],
        cuts:
          index === 1
            ? []
            : pickedToTheList(random, row, truth[index], [150, 151, 152, 153, 154, 155, 156, 157, 158, 159], 0.7),
      }));
      const byGrid = learned(watched);
      const byDraws = weighed(watched, 300_000, seed);
      byGrid.forEach((one, index) => {
        expect(Math.abs(one.daysLate - byDraws[index].daysLate)).toBeLessThan(0.05 * 7.8);
        expect(Math.abs(one.yieldFactor - byDraws[index].yieldFactor)).toBeLessThan(0.05 * 0.3);
      });
    }
  });
});

/** Exact Bayes the slow way: seasons drawn from the model's prior, each weighed by how likely it makes what was seen. */
function weighed(watched: readonly (WatchedPlanting & { firstDay: number })[], draws: number, seed: number) {
  const random = seededRandom(1000 + seed);
  const sums = watched.map(() => ({ daysLate: 0, yieldFactor: 0 }));
  const logsOf = watched.map(({ cuts }) => cuts.map(cutEvidence));
  let all = 0;
  for (let draw = 0; draw < draws; draw++) {
    const turn = ownSeason(random, watched);
    let log = 0;
    watched.forEach(({ timing, cuts, readyStems }, index) => {
      const { daysLate, yieldFactor } = turn[index];
      for (const seen of timing)
        log +=
          seen.says === "came"
            ? -0.5 * ((daysLate - seen.daysLate) / seen.spreadDays) ** 2
            : Math.log(normalShare((daysLate - seen.daysLate) / seen.spreadDays));
      cuts.forEach((cut, at) => {
        log += logsOf[index][at](readyStems(cut.day, daysLate) * yieldFactor);
      });
    });
    const weight = Math.exp(log);
    all += weight;
    turn.forEach(({ daysLate, yieldFactor }, index) => {
      sums[index].daysLate += weight * daysLate;
      sums[index].yieldFactor += weight * yieldFactor;
    });
  }
  return sums.map((sum) => ({ daysLate: sum.daysLate / all, yieldFactor: sum.yieldFactor / all }));
}
