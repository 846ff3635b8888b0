import type { FlowNetwork, FlowSolution } from "#lib/maths/flow-network";
import { flowSolver, minCostFlow } from "#lib/maths/min-cost-flow";
import { inCents, ranked, type UsedFirst } from "./match-rank";
import type { NeedParts } from "./need-parts";

/**
 * How a match lies in a flow network: nodes stand in three runs, supplies (a variety on a picking day) from 0, passages (a variety for an event
 * day) from `firstPassage`, needs, by their parts, from `firstNeed`; arcs in two, from supplies to passages and, from `firstServingArc`, on to needs.
 * Only the files `match*.ts` know these runs; everyone else asks by need and by supply.
 */
export class MatchRuns {
  readonly flow: FlowNetwork;
  readonly firstPassage: number;
  readonly firstNeed: number;
  readonly firstServingArc: number;
  readonly parts: NeedParts;

  /** The supplies that are used first: stems cut for a booking [T2]. */
  readonly usedFirst: UsedFirst;

  constructor(
    flow: FlowNetwork,
    firstPassage: number,
    firstNeed: number,
    firstServingArc: number,
    parts: NeedParts,
    usedFirst: UsedFirst = null,
  ) {
    this.flow = flow;
    this.firstPassage = firstPassage;
    this.firstNeed = firstNeed;
    this.firstServingArc = firstServingArc;
    this.parts = parts;
    this.usedFirst = usedFirst;
  }

  /** The first so many nodes of the flow are those that give: the supplies. */
  get giverCount(): number {
    return this.firstPassage;
  }

  /** The cheapest flow, in cents; of equally cheap ones one that leaves the earlier needs less short [M7]. */
  solve(): FlowSolution {
    const { flow, scale } = ranked(this.flow, this.firstNeed, this.usedFirst);
    return inCents(minCostFlow(flow), this.flow, scale, this.usedFirst);
  }

  /** The same again and again while the supplies change, each solve from the tree of the one before: the same stems short as a cold one. */
  solver(): (supply: Int32Array) => FlowSolution {
    const { flow, scale } = ranked(this.flow, this.firstNeed);
    const solve = flowSolver(flow, this.giverCount);
    return (supply) => inCents(solve(supply), this.flow, scale);
  }

  /** The flow's first node of a need; its last one comes before the first of the next need. */
  nodeOfNeed(needIndex: number): number {
    return this.firstNeed + this.parts.firstPart[needIndex];
  }

  /** Stems that a flow leaves a need short. */
  unmetOf(needIndex: number, { unmet }: Pick<FlowSolution, "unmet">): number {
    let stems = 0;
    for (let node = this.nodeOfNeed(needIndex); node < this.nodeOfNeed(needIndex + 1); node++) stems += unmet[node];
    return stems;
  }

  /** What the stems cost in cents that a flow leaves a need short [M4], what is lost by broken promises with them [M9]. */
  shortCentsOf(needIndex: number, { unmet }: Pick<FlowSolution, "unmet">): number {
    let cents = 0;
    for (let node = this.nodeOfNeed(needIndex); node < this.nodeOfNeed(needIndex + 1); node++)
      cents += unmet[node] * this.flow.unmetCost[node];
    return cents;
  }

  /** What one stem of a need costs in cents when it is short [M4]; one that was promised costs what is lost by it too [M9]. */
  stemShortCents(needIndex: number, isPromised: boolean): number {
    const { firstPart, lossCents, isPromised: isPromisedPart } = this.parts;
    const part = firstPart[needIndex];
    const priceCents = this.flow.unmetCost[this.firstNeed + part] - (isPromisedPart[part] ? lossCents : 0);
    return isPromised ? priceCents + lossCents : priceCents;
  }

  /** Promised stems that a flow leaves short in all, and what is lost by them in cents, beside their price. */
  broken({ unmet }: Pick<FlowSolution, "unmet">): { readonly brokenStems: number; readonly brokenCents: number } {
    const { isPromised, lossCents } = this.parts;
    const brokenStems = isPromised.reduce(
      (sum, promised, part) => (promised ? sum + unmet[this.firstNeed + part] : sum),
      0,
    );
    return { brokenStems, brokenCents: brokenStems * lossCents };
  }

  /** Stems short of every need, in their order. */
  unmetOfAll({ unmet }: Pick<FlowSolution, "unmet">): Int32Array {
    const { needCount, count, needOfPart } = this.parts;
    if (needCount === count) return unmet.subarray(this.firstNeed, this.flow.nodeCount);
    const stems = new Int32Array(needCount);
    for (let part = 0; part < count; part++) stems[needOfPart[part]] += unmet[this.firstNeed + part];
    return stems;
  }

  /** Stems that each supply node gives to somebody. */
  stemsGiven({ flow }: Pick<FlowSolution, "flow">): Int32Array {
    const given = new Int32Array(this.firstPassage);
    for (let arc = 0; arc < this.firstServingArc; arc++) given[this.flow.from[arc]] += flow[arc];
    return given;
  }

  /** The same stems and needs where every fit is free and a stem short costs what `shortCents` says of its need. */
  pricedBy(shortCents: (needIndex: number) => number): FlowNetwork {
    const { flow, firstNeed } = this;
    const unmetCost = new Int32Array(flow.nodeCount);
    for (let node = firstNeed; node < flow.nodeCount; node++)
      unmetCost[node] = shortCents(this.parts.needOfPart[node - firstNeed]);
    return { ...flow, cost: new Int32Array(flow.arcCount), unmetCost };
  }
}
