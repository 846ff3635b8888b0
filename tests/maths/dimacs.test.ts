import { readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { writeMatchNetwork } from "../bench/match-file";
import { highs, LinearProgramme } from "../least-cost";
import { fromDimacs, toDimacs } from "./dimacs";
import { randomNetwork, SHAPES } from "./random-networks";

/** The least cost of a file's network, every number read from the text. */
async function costOfFile(text: string): Promise<number> {
  const { supply, arcs } = fromDimacs(text);
  const programme = new LinearProgramme();
  for (const units of supply) programme.row(units, units);
  for (const [from, to, least, most, cost] of arcs) {
    expect(least).toBe(0);
    const column = programme.column(cost, most);
    if (from === to) continue;
    programme.put(from, column, 1);
    programme.put(to, column, -1);
  }
  return programme.leastCost(await highs);
}

describe("the network's file", () => {
  test("the match of the typical farm, written and read back: balanced, all counted, and HiGHS finds our cost in it", async () => {
    const file = join(tmpdir(), `match-${process.pid}.min`);
    const network = writeMatchNetwork(file, "typical");
    const text = readFileSync(file, "utf8");
    rmSync(file);
    const { nodeCount, arcCount, supply, arcs } = fromDimacs(text);
    const root = nodeCount - 1;
    const gives = network.supply.filter((units) => units > 0).length;
    const wants = network.supply.filter((units) => units < 0).length;
    expect(nodeCount).toBe(network.nodeCount + 1);
    expect(arcs).toHaveLength(arcCount);
    expect(arcCount).toBe(network.arcCount + gives + wants);
    expect(supply.reduce((sum, units) => sum + units, 0)).toBe(0);
    expect(arcs.filter(([, to]) => to === root)).toHaveLength(gives);
    expect(arcs.filter(([from]) => from === root)).toHaveLength(wants);
    expect(await costOfFile(text)).toBeCloseTo(minCostFlow(network).totalCost, 2);
  });

  test.each(SHAPES)("random networks, %s: what is written costs what we find", async (shape) => {
    for (let seed = 1; seed <= 10; seed++) {
      const network = randomNetwork(seed, shape);
      expect(await costOfFile(toDimacs(network)), `seed ${seed}`).toBeCloseTo(minCostFlow(network).totalCost, 2);
    }
  });

  test("a line that is none of the format's is refused", () => {
    expect(() => fromDimacs("p min 1 0\nn 1 1.5\n")).toThrow("not whole numbers: n 1 1.5");
    expect(() => fromDimacs("p min 1 0\nx 1\n")).toThrow("no line of the format: x 1");
  });
});
