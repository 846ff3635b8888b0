import type { Highs } from "highs";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { LinearProgramme } from "../least-cost";

/** What a network's cheapest flow costs by HiGHS: a column an arc and an unmet demand, a row a node. */
export function flowCostByHighs(highs: Highs, network: FlowNetwork): number {
  const { nodeCount, arcCount, supply, unmetCost, from, to, cost } = network;
  const programme = new LinearProgramme();
  for (let node = 0; node < nodeCount; node++) {
    const most = supply[node];
    programme.row(Math.min(0, most), most);
    if (most < 0) programme.put(node, programme.column(unmetCost[node], -most), -1);
  }
  for (let arc = 0; arc < arcCount; arc++) {
    const column = programme.column(cost[arc]);
    if (from[arc] === to[arc]) continue;
    programme.put(from[arc], column, 1);
    programme.put(to[arc], column, -1);
  }
  return programme.leastCost(highs);
}
