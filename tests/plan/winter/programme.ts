import type { Highs } from "highs";
import type { WinterFutures } from "#lib/plan/winter/futures";
import { LinearProgramme } from "../../least-cost";

/**
 * The whole choice as one mixed-integer programme: a column for every arc, every stem short and every bed. Nothing of the search is in
 * it; flags bind their beds, limits are left out. Returns the least cost in cents.
 */
export function wholeProgrammeCents(highs: Highs, { network, effects, beds }: WinterFutures): number {
  const { nodeCount, arcCount, from, to, cost, supply, unmetCost } = network.flow;
  const programme = new LinearProgramme();
  for (let node = 0; node < nodeCount; node++)
    programme.row(node < network.giverCount ? Number.NEGATIVE_INFINITY : supply[node], supply[node]);
  for (let arc = 0; arc < arcCount; arc++) {
    const column = programme.column(cost[arc]);
    programme.put(from[arc], column, 1);
    programme.put(to[arc], column, -1);
  }
  for (let node = network.nodeOfNeed(0); node < nodeCount; node++)
    programme.put(node, programme.column(unmetCost[node]), -1);
  effects.forEach(({ nodes, units }, bed) => {
    const { keep, dig, forbidden } = beds[bed];
    const kept = programme.column(keep.cents - dig.cents, forbidden.length ? 0 : 1, true);
    nodes.forEach((node, at) => {
      programme.put(node, kept, -units[at]);
    });
  });
  return programme.leastCost(highs) + beds.reduce((sum, { dig }) => sum + dig.cents, 0);
}
