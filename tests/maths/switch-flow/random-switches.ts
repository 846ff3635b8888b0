import { seededRandom, wholeBetween } from "#lib/maths/random";
import type { SwitchLimit, SwitchProblem } from "#lib/maths/switch-flow/problem";
import { NetworkSketch } from "../random-networks";

/** A problem of so many switches over a network in layers, some of it in parts that no switch reaches, with two limits that may bar everything. */
export function randomSwitches(seed: number, switchCount: number): { problem: SwitchProblem; limits: SwitchLimit[] } {
  const random = seededRandom(seed);
  const sketch = new NetworkSketch();
  const nodes = (count: number, made: () => number) => Array.from({ length: count }, made);
  const givers = nodes(wholeBetween(random, 3, 9), () => sketch.node(wholeBetween(random, 0, 6)));
  const passages = nodes(wholeBetween(random, 2, 6), () => sketch.node(0));
  const wants = nodes(wholeBetween(random, 2, 7), () =>
    sketch.node(-wholeBetween(random, 1, 15), wholeBetween(random, 20, 90)),
  );
  for (const giver of givers)
    for (const passage of passages) if (random() < 0.3) sketch.arc(giver, passage, wholeBetween(random, 0, 9));
  for (const passage of passages)
    for (const want of wants) if (random() < 0.35) sketch.arc(passage, want, wholeBetween(random, 0, 9));
  const effects = Array.from({ length: switchCount }, () => {
    const reached = givers.filter(() => random() < 0.4);
    return { nodes: Int32Array.from(reached), units: Int32Array.from(reached, () => wholeBetween(random, 1, 9)) };
  });
  const limits = [0, 1].map(() => {
    const weights = Array.from({ length: switchCount }, () => BigInt(wholeBetween(random, -3, 12)));
    const atMost = BigInt(wholeBetween(random, random() < 0.2 ? -9 : 0, 4 * switchCount));
    return { weights, atMost };
  });
  return {
    problem: {
      flow: sketch.network(),
      giverCount: givers.length,
      effects,
      switchCost: effects.map(() => wholeBetween(random, -40, 250)),
      baseCost: wholeBetween(random, 0, 500),
    },
    limits,
  };
}

/** What every selection that keeps to the limits costs, the slow way. */
export function* everySelection(switchCount: number): Generator<boolean[]> {
  for (let bits = 0; bits < 2 ** switchCount; bits++)
    yield Array.from({ length: switchCount }, (_, index) => Math.floor(bits / 2 ** index) % 2 === 1);
}
