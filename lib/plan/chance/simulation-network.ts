import type { Farm } from "#lib/domain/farm";
import type { FlowNetwork } from "#lib/maths/min-cost-flow";
import { type MatchNetwork, matchNetwork } from "#lib/plan/road/match-network";
import type { Need } from "#lib/plan/road/needs";
import type { VarietySupply } from "#lib/plan/road/supply";

/** A match's network, cut down to what has stems. `nodeOfSupply` gives each supply node's place in the full network. */
export type SeasonNetwork = {
  readonly flow: FlowNetwork;
  readonly supplyCount: number;
  readonly firstNeed: number;
  readonly firstServingArc: number;
  readonly nodeOfSupply: Int32Array;
};

/** What a stem short costs each need in cents: its buy-in price times the weight of the booking's claim, and more than the worst fit. */
export const claimCentsOf = (farm: Farm, needs: readonly Need[], buyInCents: (need: Need) => number): Int32Array =>
  matchNetwork(farm, [], needs, buyInCents).flow.unmetCost;

/**
 * The match network of every season that may come, built once. A season's own network is its part with stems: node for node and arc for
 * arc the one that `matchNetwork` would build for those stems [R2], at the price of one walk along the arcs.
 */
export class SimulationNetwork {
  readonly full: MatchNetwork;
  readonly supplyCount: number;
  /** What a stem short costs its booking in cents, by need: its price times the weight of the claim. */
  readonly claimCents: Int32Array;
  readonly #needCount: number;
  readonly #newSupply: Int32Array;
  readonly #newPassage: Int32Array;
  readonly #nodeOfSupply: Int32Array;
  readonly #supply: Int32Array;
  readonly #unmetCost: Int32Array;
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #cost: Int32Array;

  /** @param possible  per variety, every day on which it may be cut in any season; its stems are of no account */
  constructor(
    farm: Farm,
    possible: readonly VarietySupply[],
    needs: readonly Need[],
    buyInCents: (need: Need) => number,
  ) {
    this.full = matchNetwork(farm, possible, needs, buyInCents);
    this.claimCents = claimCentsOf(farm, needs, buyInCents);
    const { firstPassage, firstNeed, flow } = this.full;
    this.supplyCount = firstPassage;
    this.#needCount = needs.length;
    this.#newSupply = new Int32Array(firstPassage);
    this.#newPassage = new Int32Array(firstNeed - firstPassage);
    this.#nodeOfSupply = new Int32Array(firstPassage);
    this.#supply = new Int32Array(flow.nodeCount);
    this.#unmetCost = new Int32Array(flow.nodeCount);
    this.#from = new Int32Array(flow.arcCount);
    this.#to = new Int32Array(flow.arcCount);
    this.#cost = new Int32Array(flow.arcCount);
  }

  /**
   * The network of one season. Its arrays are used again by the next call.
   * @param stems  of each supply node of the full network
   */
  ofSeason(stems: Int32Array): SeasonNetwork {
    const { full } = this;
    const { from, to, cost, arcCount } = full.flow;
    let supplyCount = 0;
    for (let node = 0; node < this.supplyCount; node++) {
      if (stems[node] > 0) {
        this.#supply[supplyCount] = stems[node];
        this.#unmetCost[supplyCount] = 0;
        this.#nodeOfSupply[supplyCount] = node;
        this.#newSupply[node] = supplyCount++;
      } else this.#newSupply[node] = -1;
    }
    this.#newPassage.fill(-1);
    let arcs = 0;
    let passageCount = 0;
    for (let arc = 0; arc < full.firstServingArc; arc++) {
      const supply = this.#newSupply[from[arc]];
      if (supply < 0) continue;
      const passage = to[arc] - full.firstPassage;
      if (this.#newPassage[passage] < 0) this.#newPassage[passage] = supplyCount + passageCount++;
      this.#from[arcs] = supply;
      this.#to[arcs] = this.#newPassage[passage];
      this.#cost[arcs++] = cost[arc];
    }
    const firstServingArc = arcs;
    const firstNeed = supplyCount + passageCount;
    this.#supply.fill(0, supplyCount, firstNeed);
    this.#unmetCost.fill(0, supplyCount, firstNeed);
    for (let arc = full.firstServingArc; arc < arcCount; arc++) {
      const passage = this.#newPassage[from[arc] - full.firstPassage];
      if (passage < 0) continue;
      this.#from[arcs] = passage;
      this.#to[arcs] = firstNeed + to[arc] - full.firstNeed;
      this.#cost[arcs++] = cost[arc];
    }
    for (let need = 0; need < this.#needCount; need++) {
      this.#supply[firstNeed + need] = full.flow.supply[full.firstNeed + need];
      this.#unmetCost[firstNeed + need] = this.claimCents[need];
    }
    return {
      flow: {
        nodeCount: firstNeed + this.#needCount,
        supply: this.#supply,
        unmetCost: this.#unmetCost,
        arcCount: arcs,
        from: this.#from,
        to: this.#to,
        cost: this.#cost,
      },
      supplyCount,
      firstNeed,
      firstServingArc,
      nodeOfSupply: this.#nodeOfSupply,
    };
  }
}
