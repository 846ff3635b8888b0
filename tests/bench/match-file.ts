import { writeFileSync } from "node:fs";
import { LARGE, seededFarm, TYPICAL, VERY_LARGE } from "#demo/seeded-farm";
import type { FlowNetwork } from "#lib/maths/flow-network";
import { minCostFlow } from "#lib/maths/min-cost-flow";
import { toDimacs } from "../maths/dimacs";
import { networkBuilder } from "./network-builder";
import { timed } from "./timing";

const SIZES = { typical: TYPICAL, large: LARGE, "very-large": VERY_LARGE } as const;
const RUNS = { typical: 301, large: 101, "very-large": 31 } as const;
export type MatchSize = keyof typeof SIZES;

/** Writes the match's network of the invented farm of seed 1 into a file, for other solvers to read; gives the network. */
export function writeMatchNetwork(file: string, size: MatchSize): FlowNetwork {
  const { flow } = networkBuilder(seededFarm(1, SIZES[size]))();
  writeFileSync(file, toDimacs(flow));
  return flow;
}

/** `npm run bench -- network FILE [typical|large|very-large]`: writes the file and says what our solver makes of it, warm. */
export function networkLine([file, size = "typical"]: readonly string[]): string {
  if (!file || !isSize(size))
    throw new RangeError(`give a file and one of ${Object.keys(SIZES).join(", ")}, got ${file} and ${size}`);
  const network = writeMatchNetwork(file, size);
  const { medianMs, lowMs } = timed(size, RUNS[size], "", () => minCostFlow(network));
  return JSON.stringify({ cost: minCostFlow(network).totalCost, medianMs, minMs: lowMs });
}

const isSize = (size: string): size is MatchSize => size in SIZES;
