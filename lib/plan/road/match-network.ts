import type { Farm } from "#lib/domain/records/farm-settings";
import { ArcList } from "#lib/maths/arc-list";
import { CLAIMS, claimOf } from "./claim";
import { Fits } from "./fits";
import { NO_PASSAGE, Passages } from "./match-passages";
import { MatchRuns } from "./match-runs";
import { NeedParts } from "./need-parts";
import type { Need } from "./needs";
import { promiseLossCents } from "./promises";
import { type ShortPrices, shortCentsFinder } from "./short-cents";
import type { VarietySupply } from "./supply";

/**
 * The match as a network: (variety, picking day) → (variety, event day and last-cut day) → need. Substitution and age add up apart from each other, so
 * this says the same as an arc from every cut to every need, with far fewer arcs.
 */
export class MatchNetwork extends MatchRuns {
  /** First supply node of each variety, and one past the last. */
  readonly firstSupply: Int32Array;
  /** Index into the varieties of each supply node. */
  readonly varietyOfSupply: Int32Array;
  readonly varietyOfPassage: Int32Array;

  constructor(runs: MatchRuns, firstSupply: Int32Array, varietyOfSupply: Int32Array, varietyOfPassage: Int32Array) {
    super(runs.flow, runs.firstPassage, runs.firstNeed, runs.firstServingArc, runs.parts, runs.usedFirst);
    this.firstSupply = firstSupply;
    this.varietyOfSupply = varietyOfSupply;
    this.varietyOfPassage = varietyOfPassage;
  }

  /** The flow's node of a variety's stems on a day, both by their place: in the supplies, and among the variety's days. */
  nodeOf(supplyIndex: number, dayIndex: number): number {
    return this.firstSupply[supplyIndex] + dayIndex;
  }
}

/** @param buyIn  what stems short are bought in at */
export function matchNetwork(
  farm: Farm,
  varieties: readonly VarietySupply[],
  needs: readonly Need[],
  buyIn: ShortPrices,
  fits: Fits = new Fits(varieties),
  { shortCents, worstFitCents } = shortCentsFinder(farm, buyIn),
): MatchNetwork {
  const firstSupply = new Int32Array(varieties.length + 1);
  varieties.forEach(({ days }, index) => {
    firstSupply[index + 1] = firstSupply[index] + days.length;
  });
  const supplyCount = firstSupply[varieties.length];
  const passages = new Passages(farm, varieties, firstSupply, needs, buyIn);
  const worst = Int32Array.from(needs, worstFitCents);
  const short = Int32Array.from(needs, (need, index) => shortCents(need, worst[index]));
  const dearest = short.reduce((most, cents) => Math.max(most, cents), 0);
  const worstFit = worst.reduce((most, cents) => Math.max(most, cents), 0);
  const parts = new NeedParts(needs, promiseLossCents(farm.promiseLossCents, dearest, needs.length, worstFit));
  const serving = new ArcList(needs.length * 6);
  const bestFit = bestFitOfOwn(varieties, needs, fits);
  needs.forEach((need, needIndex) => {
    const fitting = fits.of(need);
    const claim = CLAIMS.indexOf(claimOf(need.booking));
    const firstPart = parts.firstPart[needIndex];
    const endPart = parts.firstPart[needIndex + 1];
    for (let index = 0; index < fitting.varieties.length; index++) {
      const variety = fitting.varieties[index];
      const passage = passages.of(variety, need, claim);
      if (passage === NO_PASSAGE) continue;
      const cents = fitting.cents[index] - bestFit[variety];
      for (let part = firstPart; part < endPart; part++) serving.push(passage, part, cents);
    }
  });
  const firstPassage = supplyCount;
  const firstNeed = firstPassage + passages.count;
  const nodeCount = firstNeed + parts.count;
  const arcCount = passages.arcs.count + serving.count;
  const from = new Int32Array(arcCount);
  const to = new Int32Array(arcCount);
  const cost = new Int32Array(arcCount);
  passages.arcs.copyTo(from, to, cost, 0, 0, firstPassage);
  serving.copyTo(from, to, cost, passages.arcs.count, firstPassage, firstNeed);

  const supply = new Int32Array(nodeCount);
  const unmetCost = new Int32Array(nodeCount);
  const varietyOfSupply = new Int32Array(supplyCount);
  varieties.forEach(({ days, stems }, variety) => {
    for (let index = 0; index < days.length; index++) {
      const node = firstSupply[variety] + index;
      supply[node] = stems[index];
      varietyOfSupply[node] = variety;
    }
  });
  for (let part = 0; part < parts.count; part++) {
    supply[firstNeed + part] = -parts.stems[part];
    unmetCost[firstNeed + part] = short[parts.needOfPart[part]] + (parts.isPromised[part] ? parts.lossCents : 0);
  }
  const isOwn = ({ bookingId }: VarietySupply) => bookingId !== undefined;
  const usedFirst = varieties.some(isOwn)
    ? Uint8Array.from(varietyOfSupply, (index) => Number(isOwn(varieties[index])))
    : null;
  const flow = { nodeCount, supply, unmetCost, arcCount, from, to, cost };
  const runs = new MatchRuns(flow, firstPassage, firstNeed, passages.arcs.count, parts, usedFirst);
  return new MatchNetwork(runs, firstSupply, varietyOfSupply, passages.varietyOfPassage());
}

/**
 * Of each supply that is a booking's own, the least fit among its needs, in cents: they are cut already, and only which of the needs they serve is still a
 * question [T2]. 0 for what is nobody's own.
 */
function bestFitOfOwn(supplies: readonly VarietySupply[], needs: readonly Need[], fits: Fits): Int32Array {
  const best = new Int32Array(supplies.length);
  if (supplies.every(({ bookingId }) => bookingId === undefined)) return best;
  const isMet = new Uint8Array(supplies.length);
  for (const need of needs) {
    const { varieties, cents } = fits.of(need);
    varieties.forEach((supply, place) => {
      if (supplies[supply].bookingId === undefined) return;
      best[supply] = isMet[supply] ? Math.min(best[supply], cents[place]) : cents[place];
      isMet[supply] = 1;
    });
  }
  return best;
}
