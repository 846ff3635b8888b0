import type { Farm } from "#lib/domain/records/farm-settings";
import { ArcList } from "#lib/maths/arc-list";
import { ageCents, WORST_FIT_CENTS } from "./fit";
import { Fits } from "./fits";
import { holdWindow } from "./hold-window";
import { MatchRuns } from "./match-runs";
import { NeedParts } from "./need-parts";
import type { Need } from "./needs";
import { promiseLossCents } from "./promises";
import type { VarietySupply } from "./supply";

/**
 * The match as a network: (variety, picking day) → (variety, event day) → need. Substitution and age add up apart from each other, so
 * this says the same as an arc from every cut to every need, with far fewer arcs.
 */
export class MatchNetwork extends MatchRuns {
  /** First supply node of each variety, and one past the last. */
  readonly firstSupply: Int32Array;
  /** Index into the varieties of each supply node. */
  readonly varietyOfSupply: Int32Array;
  readonly varietyOfPassage: Int32Array;

  constructor(runs: MatchRuns, firstSupply: Int32Array, varietyOfSupply: Int32Array, varietyOfPassage: Int32Array) {
    super(runs.flow, runs.firstPassage, runs.firstNeed, runs.firstServingArc, runs.parts);
    this.firstSupply = firstSupply;
    this.varietyOfSupply = varietyOfSupply;
    this.varietyOfPassage = varietyOfPassage;
  }

  /** The flow's node of a variety's stems on a day, both by their place: in the supplies, and among the variety's days. */
  nodeOf(supplyIndex: number, dayIndex: number): number {
    return this.firstSupply[supplyIndex] + dayIndex;
  }
}

/** @param buyInCents  price of one stem of the need when bought in */
export function matchNetwork(
  farm: Farm,
  varieties: readonly VarietySupply[],
  needs: readonly Need[],
  buyInCents: (need: Need) => number,
  fits: Fits = new Fits(varieties),
): MatchNetwork {
  const firstSupply = new Int32Array(varieties.length + 1);
  varieties.forEach(({ days }, index) => {
    firstSupply[index + 1] = firstSupply[index] + days.length;
  });
  const supplyCount = firstSupply[varieties.length];
  const passages = new Passages(farm, varieties, firstSupply, needs);
  const parts = new NeedParts(needs);
  const serving = new ArcList(needs.length * 6);
  needs.forEach((need, needIndex) => {
    const fitting = fits.of(need);
    for (let index = 0; index < fitting.varieties.length; index++) {
      const passage = passages.of(fitting.varieties[index], need.eventDay);
      if (passage === NONE) continue;
      for (let part = parts.firstPart[needIndex]; part < parts.firstPart[needIndex + 1]; part++)
        serving.push(passage, part, fitting.cents[index]);
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
  const short = needs.map((need) => shortCents(need, farm, buyInCents(need)));
  const dearest = short.reduce((most, cents) => Math.max(most, cents), 0);
  const lossCents = promiseLossCents(farm.promiseLossCents, dearest, needs.length, WORST_FIT_CENTS);
  for (let part = 0; part < parts.count; part++) {
    supply[firstNeed + part] = -parts.stems[part];
    unmetCost[firstNeed + part] = short[parts.needOfPart[part]] + (parts.isPromised[part] ? lossCents : 0);
  }
  const flow = { nodeCount, supply, unmetCost, arcCount, from, to, cost };
  const runs = new MatchRuns(flow, firstPassage, firstNeed, passages.arcs.count, parts);
  return new MatchNetwork(runs, firstSupply, varietyOfSupply, passages.varietyOfPassage());
}

/** What a stem short costs: its buy-in price times the weight of the booking's claim, and always more than the worst fit [M4]. */
function shortCents({ booking }: Need, farm: Farm, buyInCents: number): number {
  const weight = booking.status === "cancelled" ? 0 : farm.statusWeights[booking.status];
  return Math.max(Math.round(buyInCents * weight), WORST_FIT_CENTS + 1);
}

/** Marks of a passage not asked for yet, and of one that has nothing to pass on. */
const UNKNOWN = -2;
const NONE = -1;

/** The (variety, event day) nodes, made when first asked for, with the arcs from the supplies that are fresh enough for the day. */
class Passages {
  readonly arcs = new ArcList(1024);
  count = 0;
  /** Passage of a variety on a day, day after day of the season; see `UNKNOWN` and `NONE`. */
  readonly #known: Int32Array;
  readonly #firstDay: number;
  readonly #dayCount: number;
  readonly #varieties: number[] = [];
  readonly #leadDays: number;
  readonly #supplies: readonly VarietySupply[];
  readonly #firstSupply: Int32Array;

  constructor({ leadDays }: Farm, supplies: readonly VarietySupply[], firstSupply: Int32Array, needs: readonly Need[]) {
    const first = needs.reduce((day, need) => Math.min(day, need.eventDay), Number.POSITIVE_INFINITY);
    const last = needs.reduce((day, need) => Math.max(day, need.eventDay), Number.NEGATIVE_INFINITY);
    this.#firstDay = first;
    this.#dayCount = needs.length ? last - first + 1 : 0;
    this.#known = new Int32Array(supplies.length * this.#dayCount).fill(UNKNOWN);
    this.#leadDays = leadDays;
    this.#supplies = supplies;
    this.#firstSupply = firstSupply;
  }

  /** The passage's place among the passages, or `NONE` when the variety has nothing in the hold window of the day. */
  of(variety: number, eventDay: number): number {
    const key = variety * this.#dayCount + eventDay - this.#firstDay;
    if (this.#known[key] === UNKNOWN) this.#known[key] = this.#make(variety, eventDay);
    return this.#known[key];
  }

  varietyOfPassage = (): Int32Array => Int32Array.from(this.#varieties);

  #make(variety: number, eventDay: number): number {
    const { days, crop } = this.#supplies[variety];
    const holdDays = crop.holdDays.count;
    const { earliest, latest } = holdWindow(eventDay, this.#leadDays, holdDays);
    let index = firstAtLeast(days, earliest);
    if (index === days.length || days[index] > latest) return NONE;
    for (; index < days.length && days[index] <= latest; index++)
      this.arcs.push(
        this.#firstSupply[variety] + index,
        this.count,
        ageCents(eventDay - days[index], this.#leadDays, holdDays),
      );
    this.#varieties.push(variety);
    return this.count++;
  }
}

/** The first index whose day is `least` or later; the length when there is none. */
function firstAtLeast(days: readonly number[], least: number): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (days[middle] < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
