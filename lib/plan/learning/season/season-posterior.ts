import type { PlantingEvidence } from "./planting-evidence";
import { kernel, SHARED, SHARED_YIELD, standard } from "./score-grid";
import { SEASON_SHARE } from "./season-model";

/**
 * What is believed of a crop in this season, after all that was seen: by what its plantings share in lateness and in yield, as chances by score of
 * {@link SHARED}, then of {@link SHARED_YIELD}. Apart from the season's part, which `seasonChances` has.
 */
export type CropPosterior = {
  readonly cropId: number;
  readonly evidence: readonly PlantingEvidence[];
  /** The likelihood of all that was seen of the crop, its greatest 1, times the chance of what it shares in yield. */
  readonly seen: Float64Array;
  /** The chances of what it shares, given all that was seen of all crops; they sum to 1. */
  readonly chances: Float64Array;
};

/** What is believed of a season after all that was seen: exact on the grid, by messages up the tree of season, crops and plantings and down again [O3]. */
export type SeasonPosterior = {
  /** Chances of the season's score, by score of {@link SHARED}. */
  readonly seasonChances: Float64Array;
  readonly crops: readonly CropPosterior[];
};

/** Chances of what a crop shares in lateness, given the season's score: a row a score of the season. */
export const SHARED_GIVEN = kernel(SHARED, SHARED, Math.sqrt(SEASON_SHARE));

const SEASON = standard(SHARED);
const CROP_YIELD = standard(SHARED_YIELD);

/** Brings together what was seen of every planting. Crops stand in the order in which they first come. */
export function seasonPosterior(evidence: readonly PlantingEvidence[]): SeasonPosterior {
  const crops = [...new Set(evidence.map(({ planting }) => planting.cropId))].map((cropId) => {
    const ofCrop = evidence.filter(({ planting }) => planting.cropId === cropId);
    return { cropId, evidence: ofCrop, seen: seenOf(ofCrop) };
  });
  const upward = crops.map(({ seen }) => fromCrop(seen));
  const logs = SEASON.map((chance) => Math.log(chance));
  for (const message of upward) for (let season = 0; season < logs.length; season++) logs[season] += message[season];
  return {
    seasonChances: chancesOf(logs),
    crops: crops.map((crop, index) => ({
      ...crop,
      chances: downward(crop.seen, chancesOf(logs.map((log, season) => log - upward[index][season]))),
    })),
  };
}

/** Chances in proportion to the numbers of which these are the logarithms. */
function chancesOf(logs: Float64Array): Float64Array {
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return inProportion(logs.map((log) => Math.exp(log - greatest)));
}

/** Chances in proportion to weights of which one at least is above 0. */
function inProportion(weights: Float64Array): Float64Array {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  return weights.map((weight) => weight / sum);
}

function seenOf(evidence: readonly PlantingEvidence[]): Float64Array {
  const logs = new Float64Array(SHARED.scores.length * SHARED_YIELD.scores.length);
  for (const { message } of evidence)
    if (message) for (let place = 0; place < logs.length; place++) logs[place] += message[place];
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return logs.map((log, place) => Math.exp(log - greatest) * CROP_YIELD[place % CROP_YIELD.length]);
}

/** What a crop says of the season's score: the logarithm of its likelihood. */
function fromCrop(seen: Float64Array): Float64Array {
  const width = CROP_YIELD.length;
  const byLateness = SHARED.scores.map((_, shared) => {
    let sum = 0;
    for (let row = 0; row < width; row++) sum += seen[shared * width + row];
    return sum;
  });
  const size = byLateness.length;
  return SHARED.scores.map((_, season) => {
    let sum = 0;
    for (let shared = 0; shared < size; shared++) sum += SHARED_GIVEN[season * size + shared] * byLateness[shared];
    return Math.log(sum + 1e-300);
  });
}

/** What is believed of a crop, from its own evidence and what the rest of the farm says of the season. */
function downward(seen: Float64Array, seasonElsewhere: Float64Array): Float64Array {
  const size = SHARED.scores.length;
  const width = CROP_YIELD.length;
  const weights = seen.slice();
  for (let shared = 0; shared < size; shared++) {
    let before = 0;
    for (let season = 0; season < size; season++)
      before += seasonElsewhere[season] * SHARED_GIVEN[season * size + shared];
    for (let row = 0; row < width; row++) weights[shared * width + row] *= before;
  }
  return inProportion(weights);
}
