import { describe, expect, test } from "vitest";
import { checkFlow } from "#lib/maths/check-flow";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import {
  DANTZIG,
  NETWORKX_FLOW,
  OR_TOOLS_ASSIGNMENT,
  OR_TOOLS_FLOW,
  withoutCapacities,
} from "../maths/published-networks";
import { NetworkSketch } from "../maths/random-networks";

const FAR_TOO_DEAR = 100_000;

/** Origins with a way to every market; what the market has not got costs far too much. */
function transport(
  has: readonly number[],
  wants: readonly number[],
  cost: readonly (readonly number[])[],
): FlowNetwork {
  const sketch = new NetworkSketch();
  const origins = has.map((units) => sketch.node(units));
  const markets = wants.map((units) => sketch.node(-units, FAR_TOO_DEAR));
  for (const [row, origin] of origins.entries())
    for (const [column, market] of markets.entries()) sketch.arc(origin, market, cost[row][column]);
  return sketch.network();
}

/** The optimum, with its certificate and everyone served. */
function optimum(network: FlowNetwork): number {
  const solution = minCostFlow(network);
  expect(checkFlow(network, solution)).toEqual([]);
  expect(solution.unmet.every((units) => units === 0)).toBe(true);
  return solution.totalCost;
}

describe("published optima of flow problems, to the unit", () => {
  test("Dantzig's cases from Seattle and San Diego ship for 153,675 dollars", () => {
    /** 90 dollars a case and thousand miles × 1.7 thousand miles = 153 dollars a case: whole, once rounding dust is gone. */
    const freight = DANTZIG.thousandMiles.map((row) =>
      row.map((miles) => Math.round(miles * DANTZIG.dollarsPerThousandMiles)),
    );
    expect(freight).toEqual([
      [225, 153, 162],
      [225, 162, 126],
    ]);
    const dollars = optimum(transport(DANTZIG.casesAtOrigins, DANTZIG.casesForMarkets, freight));
    expect(dollars).toBe(DANTZIG.optimumDollars);
  });

  test("OR-Tools' first flow costs 150", () => {
    expect(optimum(withoutCapacities(OR_TOOLS_FLOW, FAR_TOO_DEAR))).toBe(OR_TOOLS_FLOW.optimum);
  });

  test("OR-Tools' four workers take their four tasks for 265", () => {
    const each = [1, 1, 1, 1];
    expect(optimum(transport(each, each, OR_TOOLS_ASSIGNMENT.cost))).toBe(OR_TOOLS_ASSIGNMENT.optimum);
  });

  test("NetworkX's example flow costs 24", () => {
    expect(optimum(withoutCapacities(NETWORKX_FLOW, FAR_TOO_DEAR))).toBe(NETWORKX_FLOW.optimum);
  });
});
