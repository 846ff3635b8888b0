import type { FlowNetwork } from "#lib/maths/min-cost-flow";
import { type FlowPart, UNITS_PER_STEM } from "./keep-or-dig-parts";

/**
 * What the prices of one flow say about every setting: the part costs at least `constant - Σ slopes × on`, whatever is on. Slopes stand
 * in the order of the part's switches; a switch part on counts in part. Whole numbers.
 */
export type Cut = { readonly part: number; readonly constant: number; readonly slopes: Float64Array };

/** What a cut says a part costs at least, at a setting of all switches (0 off, 1 on, or between). */
export function cutCents({ constant, slopes }: Cut, { switches }: FlowPart, setting: ArrayLike<number>): number {
  let cents = constant;
  for (let index = 0; index < slopes.length; index++) cents -= slopes[index] * setting[switches[index]];
  return cents;
}

/** The part's flow at a setting: its cost in cents, exact when every switch is on or off, and the cut that its prices give. */
export function cutAt(part: FlowPart, partIndex: number, setting: ArrayLike<number>): { cents: number; cut: Cut } {
  const supply = new Int32Array(part.flow.nodeCount);
  const exact = Float64Array.from(part.flow.supply);
  part.switches.forEach((index, place) => {
    const { nodes, stems } = part.shifts[place];
    for (let at = 0; at < nodes.length; at++) exact[nodes[at]] += stems[at] * setting[index];
  });
  for (let node = 0; node < supply.length; node++) supply[node] = Math.round(exact[node] * UNITS_PER_STEM);
  const { price, totalCost } = part.solve(supply);
  return {
    cents: totalCost / UNITS_PER_STEM,
    cut: cutOf(part, partIndex, leastPrices(part.flow, price, part.giverCount)),
  };
}

/**
 * Prices that allow no arc a gain bound the cost at every supply, whichever flow they came from: that is why a cut from rounded supplies
 * holds too. `constant` is the bound with every switch off.
 */
function cutOf(part: FlowPart, partIndex: number, price: Int32Array): Cut {
  const { flow, shifts } = part;
  let constant = 0;
  for (let node = 0; node < flow.nodeCount; node++) constant -= flow.supply[node] * price[node];
  const slopes = Float64Array.from(shifts, ({ nodes, stems }) => {
    let slope = 0;
    for (let at = 0; at < nodes.length; at++) slope += stems[at] * price[nodes[at]];
    return slope;
  });
  return { part: partIndex, constant, slopes };
}

/**
 * The lowest prices that passing and giving nodes may have beside those of the wanting ones. Where a node has no units any price in a
 * range is right; the lowest gives the highest bound for the settings in which it has some.
 */
function leastPrices(
  { arcCount, supply, from, to, cost }: FlowNetwork,
  price: Int32Array,
  giverCount: number,
): Int32Array {
  const least = price.map((cents, node) => (node >= giverCount && supply[node] < 0 ? cents : 0));
  for (const isGiving of [false, true])
    for (let arc = 0; arc < arcCount; arc++)
      if (from[arc] < giverCount === isGiving)
        least[from[arc]] = Math.max(least[from[arc]], least[to[arc]] - cost[arc]);
  return least;
}
