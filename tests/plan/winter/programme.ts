import { type MixedIntegerSolver, type ProgrammeRow, solveOnce } from "#lib/maths/mixed-integer";
import type { WinterFutures } from "#lib/plan/winter/futures";

/**
 * The whole choice as one mixed-integer programme: a column for every arc, every stem short and every bed. Nothing of the search is in
 * it; flags bind their beds, limits are left out. Returns the least cost in cents.
 */
export function wholeProgrammeCents(solver: MixedIntegerSolver, { network, effects, beds }: WinterFutures): number {
  const { nodeCount, arcCount, from, to, cost, supply, unmetCost } = network.flow;
  const needCount = nodeCount - network.nodeOfNeed(0);
  const firstBed = arcCount + needCount;
  const rows = Array.from({ length: nodeCount }, () => ({ columns: [] as number[], coefficients: [] as number[] }));
  const put = (node: number, column: number, coefficient: number) => {
    rows[node].columns.push(column);
    rows[node].coefficients.push(coefficient);
  };
  for (let arc = 0; arc < arcCount; arc++) {
    put(from[arc], arc, 1);
    put(to[arc], arc, -1);
  }
  for (let need = 0; need < needCount; need++) put(network.nodeOfNeed(need), arcCount + need, -1);
  effects.forEach(({ nodes, units }, bed) => {
    nodes.forEach((node, at) => {
      put(node, firstBed + bed, -units[at]);
    });
  });
  const answer = solveOnce(solver, {
    costs: [
      ...cost.subarray(0, arcCount),
      ...unmetCost.subarray(network.nodeOfNeed(0), nodeCount),
      ...beds.map(({ keep, dig }) => keep.cents - dig.cents),
    ],
    lowers: Array.from({ length: firstBed + beds.length }, () => 0),
    uppers: [
      ...Array.from({ length: firstBed }, () => Number.POSITIVE_INFINITY),
      ...beds.map(({ forbidden }) => (forbidden.length ? 0 : 1)),
    ],
    isWhole: Array.from({ length: firstBed + beds.length }, (_, column) => column >= firstBed),
    rows: rows.map(
      (row, node): ProgrammeRow => ({
        lower: node < network.giverCount ? Number.NEGATIVE_INFINITY : supply[node],
        upper: supply[node],
        ...row,
      }),
    ),
  });
  return answer.objective + beds.reduce((sum, { dig }) => sum + dig.cents, 0);
}
