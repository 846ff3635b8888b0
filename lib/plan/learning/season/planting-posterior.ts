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
  const chances = chancesOf(evidence, crop.chances);
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

type Seen = Pick<PlantingEvidence, "latenessGiven"> & {
  readonly likelihood: Float64Array;
  readonly message: Float64Array;
};

function chancesOf(evidence: PlantingEvidence, crop: Float64Array): Marginals {
  const { latenessGiven, likelihood, message, planting } = evidence;
  if (!likelihood || !message) return unseenChances(evidence, crop);
  return (planting.cuts.length === 0 ? lookedChances : cutChances)({ latenessGiven, likelihood, message }, crop);
}

const LATES = LATENESS.scores.length;
const HEAVIES = YIELD.scores.length;
const SHARED_LATES = SHARED.scores.length;
const SHARED_HEAVIES = SHARED_YIELD.scores.length;

/** Of a planting of which nothing was seen: what its crop shares, and its own part as it was before. */
function unseenChances({ latenessGiven }: PlantingEvidence, crop: Float64Array): Marginals {
  const byLateness = new Float64Array(LATES);
  sharedLateness(crop).forEach((chance, shared) => {
    addRow(byLateness, chance, latenessGiven, shared);
  });
  return { byLateness, byYield: yieldUnseen(crop) };
}

/** The chances of a yield of which nothing was seen in the planting itself. */
function yieldUnseen(crop: Float64Array): Float64Array {
  const byYield = new Float64Array(HEAVIES);
  for (let row = 0; row < SHARED_HEAVIES; row++) {
    let chance = 0;
    for (let shared = 0; shared < SHARED_LATES; shared++) chance += crop[shared * SHARED_HEAVIES + row];
    addRow(byYield, chance, YIELD_GIVEN, row);
  }
  return byYield;
}

/** The chances of what a crop shares in lateness. */
const sharedLateness = (crop: Float64Array): Float64Array =>
  Float64Array.from({ length: SHARED_LATES }, (_, shared) => {
    let chance = 0;
    for (let row = 0; row < SHARED_HEAVIES; row++) chance += crop[shared * SHARED_HEAVIES + row];
    return chance;
  });

/** Adds a row of a table, so many times, to sums that are as long as it. */
function addRow(sums: Float64Array, times: number, table: Float64Array, row: number): void {
  const start = row * sums.length;
  for (let place = 0; place < sums.length; place++) sums[place] += times * table[start + place];
}

/** Of a planting that was looked at and not cut: its first cut by the looks, its yield as if nothing was seen, of which looks say nothing. */
function lookedChances({ latenessGiven, likelihood, message }: Seen, crop: Float64Array): Marginals {
  const byLateness = new Float64Array(LATES);
  sharedLateness(crop).forEach((chance, shared) => {
    if (chance >= 1e-12) addRow(byLateness, chance / Math.exp(message[shared * SHARED_HEAVIES]), latenessGiven, shared);
  });
  for (let late = 0; late < LATES; late++) byLateness[late] *= likelihood[late * HEAVIES];
  return { byLateness, byYield: yieldUnseen(crop) };
}

/** Of a planting that was cut: what the crop is believed to share without it, then its own likelihood. */
function cutChances({ latenessGiven, likelihood, message }: Seen, crop: Float64Array): Marginals {
  // The chances from elsewhere by lateness, then yield: added up over all that is shared before the likelihood is looked at.
  const elsewhere = new Float64Array(LATES * HEAVIES);
  const yieldFromElsewhere = new Float64Array(HEAVIES);
  for (let shared = 0; shared < SHARED_LATES; shared++) {
    yieldFromElsewhere.fill(0);
    let isPossible = false;
    for (let row = 0; row < SHARED_HEAVIES; row++) {
      const place = shared * SHARED_HEAVIES + row;
      if (crop[place] < 1e-12) continue;
      isPossible = true;
      addRow(yieldFromElsewhere, crop[place] / Math.exp(message[place]), YIELD_GIVEN, row);
    }
    if (!isPossible) continue;
    for (let late = 0; late < LATES; late++) {
      const chance = latenessGiven[shared * LATES + late];
      if (chance < 1e-12) continue;
      const start = late * HEAVIES;
      for (let heavy = 0; heavy < HEAVIES; heavy++) elsewhere[start + heavy] += chance * yieldFromElsewhere[heavy];
    }
  }
  const byLateness = new Float64Array(LATES);
  const byYield = new Float64Array(HEAVIES);
  for (let late = 0; late < LATES; late++)
    for (let heavy = 0; heavy < HEAVIES; heavy++) {
      const weight = elsewhere[late * HEAVIES + heavy] * likelihood[late * HEAVIES + heavy];
      byLateness[late] += weight;
      byYield[heavy] += weight;
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
