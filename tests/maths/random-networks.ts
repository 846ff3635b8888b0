import type { FlowNetwork } from "#lib/maths/flow-network";
import { oneOf, type RandomSource, seededRandom, wholeBetween } from "#lib/maths/random";

/** A network written down node by node and arc by arc. */
export class NetworkSketch {
  readonly #supply: number[] = [];
  readonly #unmetCost: number[] = [];
  readonly #arcs: [from: number, to: number, cost: number][] = [];

  /** A node that gives up to `supply`, wants `-supply`, or with 0 passes on; its place. */
  node(supply: number, unmetCost = 0): number {
    this.#unmetCost.push(unmetCost);
    return this.#supply.push(supply) - 1;
  }

  arc(from: number, to: number, cost: number): void {
    this.#arcs.push([from, to, cost]);
  }

  network(): FlowNetwork {
    return {
      nodeCount: this.#supply.length,
      supply: Int32Array.from(this.#supply),
      unmetCost: Int32Array.from(this.#unmetCost),
      arcCount: this.#arcs.length,
      from: Int32Array.from(this.#arcs, ([from]) => from),
      to: Int32Array.from(this.#arcs, ([, to]) => to),
      cost: Int32Array.from(this.#arcs, ([, , cost]) => cost),
    };
  }
}

/** How a random network is shaped: what it is meant to catch. */
export const SHAPES = ["dense", "sparse", "ties", "chains", "meshed givers", "large numbers", "demands alone"] as const;
type Shape = (typeof SHAPES)[number];

/** The same seed and shape give the same network. */
export function randomNetwork(seed: number, shape: Shape): FlowNetwork {
  const random = seededRandom(seed);
  const sketch = new NetworkSketch();
  const dearest = shape === "ties" ? 1 : shape === "large numbers" ? 1_000_000 : 40;
  const mostUnits = shape === "large numbers" ? 100_000 : 12;
  const cost = () => wholeBetween(random, 0, dearest);
  const nodes = (least: number, most: number, made: () => number) =>
    Array.from({ length: wholeBetween(random, least, most) }, made);
  const givers = nodes(shape === "demands alone" ? 0 : 1, 7, () => sketch.node(wholeBetween(random, 0, mostUnits)));
  const passages = nodes(0, shape === "chains" ? 9 : 4, () => sketch.node(0));
  const wants = nodes(1, 7, () =>
    sketch.node(-wholeBetween(random, 1, mostUnits), wholeBetween(random, 0, Math.max(2, dearest * 2))),
  );
  const link = (froms: readonly number[], tos: readonly number[], share: number, leastCost = 0) => {
    for (const from of froms)
      for (const to of tos) if (random() < share) sketch.arc(from, to, Math.max(leastCost, cost()));
  };
  const share = shape === "dense" ? 1 : shape === "demands alone" ? 0.1 : shape === "sparse" ? 0.25 : 0.5;
  link(givers, passages, share);
  link(givers, wants, shape === "chains" ? 0.05 : share);
  link(passages, wants, share);
  if (shape === "chains") link(passages, passages, 0.3);
  if (shape === "meshed givers") link([...givers, ...passages], givers, 0.4, 1);
  if (shape === "ties" && givers.length > 0) doubled(random, sketch, givers, wants);
  return sketch.network();
}

/** The same two nodes linked twice at the same cost. */
function doubled(
  random: RandomSource,
  sketch: NetworkSketch,
  givers: readonly number[],
  wants: readonly number[],
): void {
  const from = oneOf(random, givers);
  const to = oneOf(random, wants);
  sketch.arc(from, to, 1);
  sketch.arc(from, to, 1);
}
