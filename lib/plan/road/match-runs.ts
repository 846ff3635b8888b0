import type { FlowNetwork, FlowSolution } from "#lib/maths/flow-network";
import { flowSolver, minCostFlow } from "#lib/maths/min-cost-flow";
import { inCents, ranked } from "./match-rank";

/**
 * How a match lies in a flow network: nodes stand in three runs, supplies (a variety on a picking day) from 0, passages (a variety for an event
 * day) from `firstPassage`, needs from `firstNeed`; arcs in two, from supplies to passages and, from `firstServingArc`, on to needs.
 * Only the files `match*.ts` know these runs; everyone else asks by need and by supply.
 */
export class MatchRuns {
  readonly flow: FlowNetwork;
  readonly firstPassage: number;
  readonly firstNeed: number;
  readonly firstServingArc: number;

  constructor(flow: FlowNetwork, firstPassage: number, firstNeed: number, firstServingArc: number) {
    this.flow = flow;
    this.firstPassage = firstPassage;
    this.firstNeed = firstNeed;
    this.firstServingArc = firstServingArc;
  }

  /** The first so many nodes of the flow are those that give: the supplies. */
  get giverCount(): number {
    return this.firstPassage;
  }

  /** The cheapest flow, in cents; of equally cheap ones one that leaves the earlier needs less short [M7]. */
  solve(): FlowSolution {
    const { flow, scale } = ranked(this.flow, this.firstNeed);
    return inCents(minCostFlow(flow), this.flow, scale);
  }

  /** The same again and again while the supplies change, each solve from the tree of the one before: the same stems short as a cold one. */
  solver(): (supply: Int32Array) => FlowSolution {
    const { flow, scale } = ranked(this.flow, this.firstNeed);
    const solve = flowSolver(flow, this.giverCount);
    return (supply) => inCents(solve(supply), this.flow, scale);
  }

  /** The flow's node of a need. */
  nodeOfNeed(needIndex: number): number {
    return this.firstNeed + needIndex;
  }

  /** What one stem short costs a need, in cents [M4]. */
  shortCentsOf(needIndex: number): number {
    return this.flow.unmetCost[this.firstNeed + needIndex];
  }

  /** Stems that a flow leaves a need short. */
  unmetOf(needIndex: number, { unmet }: Pick<FlowSolution, "unmet">): number {
    return unmet[this.firstNeed + needIndex];
  }

  /** Stems short of every need, in their order: a view into the solution. */
  unmetOfAll({ unmet }: Pick<FlowSolution, "unmet">): Int32Array {
    return unmet.subarray(this.firstNeed, this.flow.nodeCount);
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
    for (let node = firstNeed; node < flow.nodeCount; node++) unmetCost[node] = shortCents(node - firstNeed);
    return { ...flow, cost: new Int32Array(flow.arcCount), unmetCost };
  }
}
