import type { Farm } from "#lib/domain/records/farm-settings";
import { buckets } from "#lib/maths/buckets";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowSolution } from "#lib/maths/flow-network";
import { Fits } from "./fits";
import { type MatchNetwork, matchNetwork } from "./match-network";
import type { Need } from "./needs";
import { type ShortPrices, shortCentsFinder } from "./short-cents";
import type { Stand, VarietySupply } from "./supply";
import { whenAsked } from "./when-asked";

/** Stems of one stand, cut on one day, that serve one need: the smallest part of a match. */
export type Serving = {
  readonly needIndex: number;
  readonly supplyIndex: number;
  readonly stand: Stand;
  readonly cutDay: number;
  readonly stems: number;
};

/**
 * Which cut serves which need, at least cost, with the node prices that prove it. `shortStems[i]` of need i are not covered;
 * servings of a need sum to the rest [M5]. `supplyIndex` counts varieties in `supplies`.
 */
export type Match = {
  readonly needs: readonly Need[];
  readonly supplies: readonly VarietySupply[];
  readonly fits: Fits;
  readonly network: MatchNetwork;
  readonly solution: FlowSolution;
  readonly shortStems: Int32Array;
  /** Worked out when they are first asked for: what is short and what it costs is known without. */
  readonly servings: readonly Serving[];
};

/**
 * Matches a season's supply with its needs.
 * @param buyIn  what stems short are bought in at
 * @param worst  what these prices and this farm make of a need, where that is remembered
 */
export function match(
  farm: Farm,
  supplies: readonly VarietySupply[],
  needs: readonly Need[],
  buyIn: ShortPrices,
  worst = shortCentsFinder(farm, buyIn),
): Match {
  const fits = new Fits(supplies);
  const network = matchNetwork(farm, supplies, needs, buyIn, fits, worst);
  const solution = network.solve();
  const shortStems = network.unmetOfAll(solution);
  const served = whenAsked(() => servings(supplies, network, solution));
  return {
    needs,
    supplies,
    fits,
    network,
    solution,
    shortStems,
    get servings() {
      return served();
    },
  };
}

/**
 * Proves a match: the certificate of its flow, and that the servings say the same as the flow, arc by arc: each need gets what it is not
 * short, from lots that stand there on the day, and no lot gives more than it has. An empty list is the proof.
 * @internal for tests
 */
export function checkMatch(match: Match): string[] {
  const { needs, supplies, network, solution, shortStems, servings } = match;
  const faults = [...checkFlow(network.flow, solution), ...strayServings(match)];
  const got = new Int32Array(needs.length);
  const taken = new Map<string, number>();
  const stands = new Map<Stand, number>();
  const keyOf = (supplyIndex: number, stand: Stand, day: number): string => {
    const place = stands.get(stand) ?? stands.size;
    stands.set(stand, place);
    return `${supplyIndex} ${place} ${day}`;
  };
  for (const { needIndex, supplyIndex, stand, cutDay, stems } of servings) {
    if (stems <= 0) faults.push(`a serving of ${stems} stems`);
    got[needIndex] += stems;
    const key = keyOf(supplyIndex, stand, cutDay);
    taken.set(key, (taken.get(key) ?? 0) + stems);
  }
  needs.forEach((need, index) => {
    if (got[index] + shortStems[index] !== need.stems)
      faults.push(`need ${index} of ${need.stems} stems gets ${got[index]} and is short ${shortStems[index]}`);
  });
  supplies.forEach(({ days, lots }, supplyIndex) => {
    lots.forEach((ofDay, index) => {
      for (const { stand, stems } of ofDay) {
        const used = taken.get(keyOf(supplyIndex, stand, days[index])) ?? 0;
        if (used > stems) faults.push(`a lot of ${stems} stems gives ${used}`);
      }
    });
  });
  return faults;
}

/** Where servings say something else than the flow: each runs along one arc to a passage and one from it to a need. */
function strayServings({ supplies, network, solution, servings }: Match): string[] {
  const { flow, firstServingArc, firstPassage, firstNeed, firstSupply, varietyOfPassage, parts } = network;
  const arcs = new Map<string, number>();
  // The parts of a need are served alike: what its later arcs carry is counted with the first.
  const unsaid = solution.flow.slice();
  for (let arc = 0; arc < flow.arcCount; arc++) {
    const isServing = arc >= firstServingArc;
    const from = isServing ? `variety ${varietyOfPassage[flow.from[arc] - firstPassage]}` : flow.from[arc];
    const way = `${from} to ${isServing ? `need ${parts.needOfPart[flow.to[arc] - firstNeed]}` : flow.to[arc]}`;
    const first = arcs.get(way);
    if (first === undefined) arcs.set(way, arc);
    else {
      unsaid[first] += unsaid[arc];
      unsaid[arc] = 0;
    }
  }
  const faults: string[] = [];
  for (const { needIndex, supplyIndex, stand, cutDay, stems } of servings) {
    const place = supplies[supplyIndex].days.indexOf(cutDay);
    const isThere = place >= 0 && supplies[supplyIndex].lots[place].some((lot) => lot.stand === stand);
    const serves = arcs.get(`variety ${supplyIndex} to need ${needIndex}`) ?? -1;
    const feeds = arcs.get(`${firstSupply[supplyIndex] + place} to ${flow.from[serves]}`) ?? -1;
    if (isThere && serves >= 0 && feeds >= 0) {
      unsaid[serves] -= stems;
      unsaid[feeds] -= stems;
    } else faults.push(`need ${needIndex} gets ${stems} stems from where it can get none`);
  }
  unsaid.forEach((stems, arc) => {
    if (stems !== 0) faults.push(`arc ${arc} carries ${stems} stems more than the servings say`);
  });
  return faults;
}

/** Takes the flow apart: which lot serves which need. In one passage the freshest stems go to the first need. */
function servings(supplies: readonly VarietySupply[], network: MatchNetwork, { flow }: FlowSolution): Serving[] {
  const {
    flow: { arcCount, from, to },
    firstServingArc,
    firstPassage,
    firstNeed,
    firstSupply,
    varietyOfSupply,
    parts,
  } = network;
  const needOf = (arc: number) => parts.needOfPart[to[arc] - firstNeed];
  const passageCount = firstNeed - firstPassage;
  const servingArcs = buckets(passageCount, firstServingArc, arcCount, (arc) =>
    flow[arc] > 0 ? from[arc] - firstPassage : -1,
  );
  const lotReader = new LotReader(supplies, firstSupply, varietyOfSupply);
  const out: Serving[] = [];
  let feeding = 0;
  for (let passage = 0; passage < passageCount; passage++) {
    const firstFeeding = feeding;
    while (feeding < firstServingArc && to[feeding] === firstPassage + passage) feeding++;
    let arc = feeding - 1;
    let left = arc >= firstFeeding ? flow[arc] : 0;
    const end = servingArcs.start[passage + 1];
    for (let index = servingArcs.start[passage]; index < end; index++) {
      const needIndex = needOf(servingArcs.members[index]);
      let wanted = flow[servingArcs.members[index]];
      // The parts of a need stand side by side, and are served as one.
      for (; index + 1 < end && needOf(servingArcs.members[index + 1]) === needIndex; index++)
        wanted += flow[servingArcs.members[index + 1]];
      while (wanted > 0) {
        while (left === 0) left = flow[--arc];
        const stems = Math.min(wanted, left);
        lotReader.take(from[arc], needIndex, stems, out);
        wanted -= stems;
        left -= stems;
      }
    }
  }
  return out;
}

/** Hands out the lots of each supply node one after the other, so that a need is cut in as few beds as may be. */
class LotReader {
  readonly #lotIndex: Int32Array;
  readonly #taken: Int32Array;
  readonly #supplies: readonly VarietySupply[];
  readonly #firstSupply: Int32Array;
  readonly #varietyOfSupply: Int32Array;

  constructor(supplies: readonly VarietySupply[], firstSupply: Int32Array, varietyOfSupply: Int32Array) {
    this.#supplies = supplies;
    this.#firstSupply = firstSupply;
    this.#varietyOfSupply = varietyOfSupply;
    this.#lotIndex = new Int32Array(varietyOfSupply.length);
    this.#taken = new Int32Array(varietyOfSupply.length);
  }

  take(node: number, needIndex: number, stemsWanted: number, out: Serving[]): void {
    const supplyIndex = this.#varietyOfSupply[node];
    const place = node - this.#firstSupply[supplyIndex];
    const lots = this.#supplies[supplyIndex].lots[place];
    const cutDay = this.#supplies[supplyIndex].days[place];
    let wanted = stemsWanted;
    while (wanted > 0) {
      const lot = lots[this.#lotIndex[node]];
      const stems = Math.min(wanted, lot.stems - this.#taken[node]);
      if (stems > 0) out.push({ needIndex, supplyIndex, stand: lot.stand, cutDay, stems });
      wanted -= stems;
      this.#taken[node] += stems;
      if (this.#taken[node] === lot.stems) {
        this.#lotIndex[node]++;
        this.#taken[node] = 0;
      }
    }
  }
}
