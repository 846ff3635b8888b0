import type { FlowNetwork, FlowSolution } from "./flow-network";

/**
 * Proves a flow by its certificate, trusting nothing of the solver: whole units, none negative; no node gives more than it has, every wanting node
 * is served or counted unmet; no arc and no unmet unit could be cheaper (reduced costs not negative); units only where the reduced
 * cost is 0; and the cost equals the bound that the prices give (duality). An empty list is a proof of optimality.
 */
export function checkFlow(network: FlowNetwork, solution: FlowSolution): string[] {
  const { nodeCount, arcCount, supply, unmetCost, from, to, cost } = network;
  const { flow, unmet, price, totalCost } = solution;
  const faults: string[] = [];
  const leaves = new Float64Array(nodeCount);
  let paid = 0;
  for (let arc = 0; arc < arcCount; arc++) {
    const reducedCost = cost[arc] + price[from[arc]] - price[to[arc]];
    if (flow[arc] < 0) faults.push(`arc ${arc} carries ${flow[arc]} units`);
    if (reducedCost < 0) faults.push(`arc ${arc} would lower the cost by ${-reducedCost} a unit`);
    if (flow[arc] > 0 && reducedCost !== 0)
      faults.push(`arc ${arc} carries ${flow[arc]} units at a loss of ${reducedCost}`);
    leaves[from[arc]] += flow[arc];
    leaves[to[arc]] -= flow[arc];
    paid += flow[arc] * cost[arc];
  }
  let bound = 0;
  for (let node = 0; node < nodeCount; node++) {
    const wants = supply[node] < 0;
    if (unmet[node] < 0 || (!wants && unmet[node] > 0)) faults.push(`node ${node} has ${unmet[node]} unmet units`);
    if (wants) {
      if (leaves[node] - unmet[node] !== supply[node])
        faults.push(`node ${node} wants ${-supply[node]}, gets ${-leaves[node]}, goes without ${unmet[node]}`);
      if (price[node] > unmetCost[node]) faults.push(`node ${node} is priced above going without`);
      if (unmet[node] > 0 && price[node] !== unmetCost[node]) faults.push(`node ${node} goes without below its price`);
    } else if (supply[node] === 0) {
      if (leaves[node] !== 0) faults.push(`node ${node} passes on ${leaves[node]} units more than it gets`);
    } else {
      const unused = supply[node] - leaves[node];
      if (unused < 0 || leaves[node] < 0) faults.push(`node ${node} has ${supply[node]} and gives ${leaves[node]}`);
      if (price[node] < 0) faults.push(`node ${node} has the negative price ${price[node]}`);
      if (unused > 0 && price[node] !== 0) faults.push(`node ${node} keeps units worth ${price[node]}`);
    }
    paid += unmet[node] * unmetCost[node];
    bound -= supply[node] * price[node];
  }
  if (paid !== totalCost) faults.push(`the flow costs ${paid}, the solution says ${totalCost}`);
  if (bound !== paid) faults.push(`the prices bound the cost at ${bound}, the flow costs ${paid}`);
  return faults;
}
