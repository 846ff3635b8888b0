import type { Farm } from "#lib/domain/records/farm-settings";
import { type MatchNetwork, matchNetwork } from "./match-network";
import { MatchRuns } from "./match-runs";
import type { Need } from "./needs";
import type { ShortPrices } from "./short-cents";
import type { VarietySupply } from "./supply";

/**
 * The match network of all stems that there might be, built once. The network of those that there are is its part with stems: node for node and
 * arc for arc the one that `matchNetwork` would build for them [R2], at the price of one walk along the arcs.
 */
export class MatchOfStems {
  readonly #full: MatchNetwork;
  readonly #partCount: number;
  readonly #newSupply: Int32Array;
  readonly #newPassage: Int32Array;
  readonly #supply: Int32Array;
  readonly #unmetCost: Int32Array;
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #cost: Int32Array;

  /** @param possible  per variety, every day on which it may be cut in any season; its stems are of no account */
  constructor(farm: Farm, possible: readonly VarietySupply[], needs: readonly Need[], buyIn: ShortPrices) {
    this.#full = matchNetwork(farm, possible, needs, buyIn);
    const { firstPassage, firstNeed, flow } = this.#full;
    this.#partCount = this.#full.parts.count;
    this.#newSupply = new Int32Array(firstPassage);
    this.#newPassage = new Int32Array(firstNeed - firstPassage);
    this.#supply = new Int32Array(flow.nodeCount);
    this.#unmetCost = new Int32Array(flow.nodeCount);
    this.#from = new Int32Array(flow.arcCount);
    this.#to = new Int32Array(flow.arcCount);
    this.#cost = new Int32Array(flow.arcCount);
  }

  /**
   * The network of the stems at hand. Its arrays are used again by the next call.
   * @param stems  of each supply node of the full network
   */
  ofStems(stems: Int32Array): MatchRuns {
    const full = this.#full;
    const { from, to, cost, arcCount } = full.flow;
    let supplyCount = 0;
    for (let node = 0; node < full.firstPassage; node++) {
      if (stems[node] > 0) {
        this.#supply[supplyCount] = stems[node];
        this.#unmetCost[supplyCount] = 0;
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
    for (let part = 0; part < this.#partCount; part++) {
      this.#supply[firstNeed + part] = full.flow.supply[full.firstNeed + part];
      this.#unmetCost[firstNeed + part] = full.flow.unmetCost[full.firstNeed + part];
    }
    const flow = {
      nodeCount: firstNeed + this.#partCount,
      supply: this.#supply,
      unmetCost: this.#unmetCost,
      arcCount: arcs,
      from: this.#from,
      to: this.#to,
      cost: this.#cost,
    };
    return new MatchRuns(flow, supplyCount, firstNeed, firstServingArc, full.parts);
  }
}
