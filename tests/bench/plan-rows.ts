import loadHighs, { type Highs } from "highs";
import { type FarmSize, LARGE, seededFarm, TYPICAL, VERY_LARGE } from "#demo/seeded-farm";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { type Plan, plan } from "#lib/plan/road/plan";
import { winterBeds, withKeptBeds } from "#lib/plan/winter/beds";
import { networkBuilder, SEASON } from "./network-builder";
import { type BenchRow, timed } from "./timing";

const SIZES: readonly {
  name: string;
  size: FarmSize;
  runCount: number;
  highsRuns: number;
  solve: string;
  replan: string;
}[] = [
  { name: "typical", size: TYPICAL, runCount: 101, highsRuns: 9, solve: "0.9 ms", replan: "6 ms" },
  { name: "large", size: LARGE, runCount: 31, highsRuns: 3, solve: "13 ms", replan: "60 ms" },
  { name: "very large", size: VERY_LARGE, runCount: 7, highsRuns: 1, solve: "150 ms", replan: "1 s" },
];

/** The solver beside HiGHS, the network's building beside its solving, and the whole plan, at three sizes, warm, in one process. */
export async function planRows(): Promise<{ rows: BenchRow[]; lines: string[] }> {
  const highs = await loadHighs();
  const lines: string[] = [];
  const points: { arcs: number; ms: number }[] = [];
  const rows = SIZES.flatMap(({ name, size, runCount, highsRuns, solve, replan }) => {
    const farm = seededFarm(1, size);
    const build = networkBuilder(farm);
    const { flow } = build();
    const built = timed(`build the network, ${name}`, runCount, "no dearer than solving it", build);
    const solved = timed(
      `solve it, ${name}`,
      runCount,
      solve,
      () => minCostFlow(flow),
      `${flow.nodeCount} nodes, ${flow.arcCount} arcs`,
    );
    const byHighs = timed(`HiGHS on the same, ${name}`, highsRuns, "", () => costByHighs(highs, flow));
    const planned = timed(`whole plan, ${name}`, runCount, replan, () => wholly(plan(farm, SEASON)));
    const before = plan(farm, SEASON);
    const ticked = withKeptBeds(farm, SEASON, [winterBeds(farm, SEASON)[0].bed.id]);
    const again = timed(`forecast and match again after a tick, ${name}`, runCount, "", () =>
      plan(ticked, SEASON, undefined, before),
    );
    const solution = minCostFlow(flow);
    const same = solution.totalCost === Math.round(costByHighs(highs, flow)) && checkFlow(flow, solution).length === 0;
    lines.push(
      `${name}: same optimum as HiGHS: ${same ? "yes" : "NO"}; HiGHS takes ${(byHighs.medianMs / solved.medianMs).toFixed(0)} times as long; ` +
        `building costs ${(built.medianMs / solved.medianMs).toFixed(2)} of solving`,
    );
    points.push({ arcs: flow.arcCount, ms: solved.medianMs });
    return [built, solved, byHighs, planned, again];
  });
  const [first, , last] = points;
  const exponent = Math.log(last.ms / first.ms) / Math.log(last.arcs / first.arcs);
  lines.push(
    `growth of solving with arcs, typical to very large: exponent ${exponent.toFixed(2)} (to reach: 1.1 or less)`,
  );
  lines.push(
    `memory of the process after all this: ${(process.memoryUsage().rss / 2 ** 20).toFixed(0)} MiB (to reach: under 1 GiB)`,
  );
  return { rows, lines };
}

/** The network as a linear programme in HiGHS's own arrays: a column an arc and a column an unmet need, a row a node. */
function costByHighs(highs: Highs, { nodeCount, arcCount, supply, unmetCost, from, to, cost }: FlowNetwork): number {
  const wanting: number[] = [];
  for (let node = 0; node < nodeCount; node++) if (supply[node] < 0) wanting.push(node);
  const columnCount = arcCount + wanting.length;
  const starts = new Int32Array(columnCount + 1);
  const indices = new Int32Array(2 * arcCount + wanting.length);
  const values = new Float64Array(indices.length);
  const colCost = new Float64Array(columnCount);
  const colUpper = new Float64Array(columnCount).fill(Number.POSITIVE_INFINITY);
  for (let arc = 0; arc < arcCount; arc++) {
    starts[arc + 1] = 2 * (arc + 1);
    indices.set([from[arc], to[arc]], 2 * arc);
    values.set([1, -1], 2 * arc);
    colCost[arc] = cost[arc];
  }
  wanting.forEach((node, index) => {
    const column = arcCount + index;
    starts[column + 1] = 2 * arcCount + index + 1;
    indices[2 * arcCount + index] = node;
    values[2 * arcCount + index] = -1;
    colCost[column] = unmetCost[node];
    colUpper[column] = -supply[node];
  });
  const model = highs.createModel({
    numCols: columnCount,
    numRows: nodeCount,
    colCost,
    colLower: new Float64Array(columnCount),
    colUpper,
    rowLower: Float64Array.from(supply.subarray(0, nodeCount), (units) => Math.min(0, units)),
    rowUpper: Float64Array.from(supply.subarray(0, nodeCount)),
    matrix: { format: "csc", numRows: nodeCount, numCols: columnCount, starts, indices, values },
  });
  model.options.set({ output_flag: false });
  model.run();
  const cents = model.getObjectiveValue();
  model.dispose();
  return cents;
}

/** A plan with all that it works out only when it is asked for. */
export const wholly = ({ gaps, weeks, pickList, buying, surplus }: Plan) => [gaps, weeks, pickList, buying, surplus];
