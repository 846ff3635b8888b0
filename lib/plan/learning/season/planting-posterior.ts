import { type PlantingEvidence, YIELD_GIVEN } from "./planting-evidence";
import { LATENESS, SHARED, SHARED_YIELD, YIELD } from "./score-grid";
import type { CropPosterior } from "./season-posterior";

/** What is believed of a planting: its days late and its yield factor, each by mean and one standard deviation. */
export type PlantingPosterior = {
  readonly plantingId: number;
  readonly daysLate: number;
  readonly daysLateSpread: number;
  /** The days late that are most believed: of a crop that has begun by its day and may well have begun before, none, where the mean is early. */
  readonly likeliestDaysLate: number;
  readonly yieldFactor: number;
  readonly yieldFactorSpread: number;
};

/** What is believed of one planting of a crop, from what was seen of it, of its crop and of the season. */
export function plantingPosterior(evidence: PlantingEvidence, crop: CropPosterior): PlantingPosterior {
  const { daysLate, yieldFactors, planting } = evidence;
  const chances = evidence.likelihood ? seenChances(evidence, crop.chances) : unseenChances(evidence, crop.chances);
  const late = momentsOf(chances.byLateness, daysLate);
  const heavy = momentsOf(chances.byYield, yieldFactors);
  return {
    plantingId: planting.id,
    daysLate: late.mean,
    daysLateSpread: late.spread,
    likeliestDaysLate: daysLate[greatestOf(chances.byLateness)],
    yieldFactor: heavy.mean,
    yieldFactorSpread: heavy.spread,
  };
}

type Marginals = { readonly byLateness: Float64Array; readonly byYield: Float64Array };

const LATES = LATENESS.scores.length;
const HEAVIES = YIELD.scores.length;
const SHARED_LATES = SHARED.scores.length;
const SHARED_HEAVIES = SHARED_YIELD.scores.length;

/** Of a planting of which nothing was seen: what its crop shares, and its own part as it was before. */
function unseenChances({ latenessGiven }: PlantingEvidence, crop: Float64Array): Marginals {
  const byLateness = new Float64Array(LATES);
  const byYield = new Float64Array(HEAVIES);
  for (let shared = 0; shared < SHARED_LATES; shared++)
    for (let row = 0; row < SHARED_HEAVIES; row++) {
      const chance = crop[shared * SHARED_HEAVIES + row];
      if (chance < 1e-12) continue;
      for (let late = 0; late < LATES; late++) byLateness[late] += chance * latenessGiven[shared * LATES + late];
      for (let heavy = 0; heavy < HEAVIES; heavy++) byYield[heavy] += chance * YIELD_GIVEN[row * HEAVIES + heavy];
    }
  return { byLateness, byYield };
}

/** Of a planting that was seen: what the crop is believed to share without it, then its own likelihood. */
function seenChances({ latenessGiven, likelihood, message }: PlantingEvidence, crop: Float64Array): Marginals {
  const byLateness = new Float64Array(LATES);
  const byYield = new Float64Array(HEAVIES);
  if (!likelihood || !message) return { byLateness, byYield };
  const yieldFromElsewhere = new Float64Array(HEAVIES);
  for (let shared = 0; shared < SHARED_LATES; shared++) {
    yieldFromElsewhere.fill(0);
    for (let row = 0; row < SHARED_HEAVIES; row++) {
      const place = shared * SHARED_HEAVIES + row;
      if (crop[place] < 1e-12) continue;
      const without = crop[place] / Math.exp(message[place]);
      for (let heavy = 0; heavy < HEAVIES; heavy++)
        yieldFromElsewhere[heavy] += without * YIELD_GIVEN[row * HEAVIES + heavy];
    }
    for (let late = 0; late < LATES; late++) {
      const chance = latenessGiven[shared * LATES + late];
      if (chance < 1e-12) continue;
      for (let heavy = 0; heavy < HEAVIES; heavy++) {
        const weight = chance * yieldFromElsewhere[heavy] * likelihood[late * HEAVIES + heavy];
        byLateness[late] += weight;
        byYield[heavy] += weight;
      }
    }
  }
  return { byLateness, byYield };
}

/** The place of the greatest, of several that are alike the one nearest to the middle. */
function greatestOf(weights: Float64Array): number {
  const middle = (weights.length - 1) / 2;
  let found = middle;
  for (let place = 0; place < weights.length; place++) {
    const isNearer = weights[place] === weights[found] && Math.abs(place - middle) < Math.abs(found - middle);
    if (weights[place] > weights[found] || isNearer) found = place;
  }
  return found;
}

function momentsOf(weights: Float64Array, values: Float64Array): { readonly mean: number; readonly spread: number } {
  let sum = 0;
  let first = 0;
  let second = 0;
  for (let place = 0; place < weights.length; place++) {
    sum += weights[place];
    first += weights[place] * values[place];
    second += weights[place] * values[place] ** 2;
  }
  const mean = first / sum;
  return { mean, spread: Math.sqrt(Math.max(0, second / sum - mean * mean)) };
}
