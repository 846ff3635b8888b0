import { normalQuantile } from "#lib/maths/normal";
import { sharesAt } from "#lib/maths/philox";
import { whenAsked } from "#lib/plan/road/when-asked";
import { SIZE } from "./cut-evidence";
import { type PlantingEvidence, YIELD_GIVEN } from "./planting-evidence";
import { LATENESS, type ScoreGrid, SHARED, SHARED_YIELD, YIELD } from "./score-grid";
import { type CropPosterior, type SeasonPosterior, SHARED_GIVEN } from "./season-posterior";

/** A planting as one of the seasons that may still come turns it out. */
export type DrawnPlanting = { readonly plantingId: number; readonly daysLate: number; readonly yieldFactor: number };

const KEY = [0, 0] as const;
const OF_THE_SEASON = 0;
const OF_A_CROP = 1;
const OF_A_PLANTING = 2;
const OF_DAYS = 3;

/**
 * Seasons drawn from what is believed, each with its plantings in the order of the crops' evidence: what they share drawn together, so that a late
 * crop is late in all its beds; plantings that are not wanted are left out, and change nothing of the rest. The same posterior and number give the same season.
 */
export function seasonDraws(
  posterior: SeasonPosterior,
  isWanted: (plantingId: number) => boolean = () => true,
): (season: number) => DrawnPlanting[] {
  const drawSeason = drawer(posterior.seasonChances);
  const crops = posterior.crops.map((crop) => ({
    crop,
    sharedAt: sharedAfter(crop),
    plantings: crop.evidence
      .filter(({ planting }) => isWanted(planting.id))
      .map((evidence) => ({ evidence, ...plantingDrawer(evidence) })),
  }));
  return (season) => {
    const score = drawSeason(sharesAt(KEY, [season, 0, OF_THE_SEASON, 0]).a);
    return crops.flatMap(({ crop, sharedAt, plantings }) => {
      const shared = sharedAt(score)(sharesAt(KEY, [season, crop.cropId, OF_A_CROP, 0]).a);
      const sharedLate = Math.floor(shared / SHARED_YIELD.scores.length);
      const sharedHeavy = shared % SHARED_YIELD.scores.length;
      return plantings.map(({ evidence, draw }) => {
        const own = sharesAt(KEY, [season, evidence.planting.id, OF_A_PLANTING, 0]);
        const { late, heavy } = draw(sharedLate, sharedHeavy, own.a, own.b);
        return {
          plantingId: evidence.planting.id,
          daysLate: between(evidence.daysLate, late, own.c, LATENESS),
          yieldFactor: Math.max(0, between(evidence.yieldFactors, heavy, own.d, YIELD)),
        };
      });
    });
  };
}

/**
 * Stems that some picking days find ready in all, as chance turns them out about what is expected of each: a gamma distribution with the mean and the variance
 * of the sum, at a score. Not whole: a sum of many.
 * @param season  the number of the drawn season
 * @param place   tells these days from others of the planting
 * Source: E. B. Wilson and M. M. Hilferty, "The distribution of chi-square", PNAS 17, 1931: the cube root of a gamma is nearly normal.
 */
export function drawnStems(expected: readonly number[], season: number, plantingId: number, place: number): number {
  let mean = 0;
  let variance = 0;
  for (const stems of expected) {
    mean += stems;
    variance += stems + (stems * stems) / SIZE;
  }
  if (mean <= 0) return 0;
  const score = normalQuantile(sharesAt(KEY, [season, plantingId, OF_DAYS, place]).a);
  const ninth = variance / (9 * mean * mean);
  return mean * Math.max(0, 1 - ninth + score * Math.sqrt(ninth)) ** 3;
}

/** Picks a place of a list of weights, in proportion to them, by a share between 0 and 1. */
function drawer(weights: Float64Array): (share: number) => number {
  const sums = new Float64Array(weights.length);
  let sum = 0;
  for (let place = 0; place < weights.length; place++) {
    sum += weights[place];
    sums[place] = sum;
  }
  return (share) => {
    let low = 0;
    let high = weights.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle] > share * sum) high = middle;
      else low = middle + 1;
    }
    return low;
  };
}

/** What a crop shares, given the season's score: each made when a season first has it. */
function sharedAfter({ seen }: CropPosterior): (season: number) => (share: number) => number {
  const made = new Map<number, (share: number) => number>();
  const width = SHARED_YIELD.scores.length;
  return (season) => {
    const found =
      made.get(season) ??
      drawer(
        seen.map((weight, place) => weight * SHARED_GIVEN[season * SHARED.scores.length + Math.floor(place / width)]),
      );
    made.set(season, found);
    return found;
  };
}

type PlantingDrawer = {
  readonly draw: (
    sharedLate: number,
    sharedHeavy: number,
    lateShare: number,
    heavyShare: number,
  ) => { readonly late: number; readonly heavy: number };
};

function plantingDrawer({ likelihood, latenessGiven }: PlantingEvidence): PlantingDrawer {
  const lates = LATENESS.scores.length;
  const heavies = YIELD.scores.length;
  const lateWeights = new Map<number, (share: number) => number>();
  const heavyWeights = new Map<number, (share: number) => number>();
  const kept = (made: typeof lateWeights, key: number, make: () => Float64Array) => {
    const found = made.get(key) ?? drawer(make());
    made.set(key, found);
    return found;
  };
  const yieldWeight = (late: number, row: number, heavy: number) =>
    (likelihood ? likelihood[late * heavies + heavy] : 1) * YIELD_GIVEN[row * heavies + heavy];
  const byLateness = likelihood && whenAsked(() => overYields(likelihood));
  const latenessWeights = (shared: number, row: number) =>
    LATENESS.scores.map(
      (_, late) => latenessGiven[shared * lates + late] * (byLateness ? byLateness()[row * lates + late] : 1),
    );
  return {
    draw: (shared, row, lateShare, heavyShare) => {
      const places = SHARED_YIELD.scores.length;
      const late = kept(lateWeights, shared * places + row, () => latenessWeights(shared, row))(lateShare);
      const ofYield = (likelihood ? late : 0) * places + row;
      const heavy = kept(heavyWeights, ofYield, () => YIELD.scores.map((_, one) => yieldWeight(late, row, one)))(
        heavyShare,
      );
      return { late, heavy };
    },
  };
}

/** How likely what was seen is at each lateness, whatever the yield: a row a score of what the crop shares in yield. */
function overYields(likelihood: Float64Array): Float64Array {
  const lates = LATENESS.scores.length;
  const heavies = YIELD.scores.length;
  const sums = new Float64Array(SHARED_YIELD.scores.length * lates);
  for (let row = 0; row < SHARED_YIELD.scores.length; row++)
    for (let late = 0; late < lates; late++)
      for (let heavy = 0; heavy < heavies; heavy++)
        sums[row * lates + late] += likelihood[late * heavies + heavy] * YIELD_GIVEN[row * heavies + heavy];
  return sums;
}

/** A value of a grid, anywhere in its step. */
function between(values: Float64Array, place: number, share: number, { scores }: ScoreGrid): number {
  const off = share - 0.5;
  const beside = Math.min(scores.length - 1, Math.max(0, place + (off < 0 ? -1 : 1)));
  return values[place] + Math.abs(off) * (values[beside] - values[place]);
}
