import type { Match } from "./match";

/**
 * Stems of each variety by day, and how many the match leaves free, summed ahead so that any run of days is one subtraction.
 * Days are day numbers, both ends included; `supplyIndex` counts varieties in `match.supplies`.
 */
export class StemsByDay {
  readonly #match: Match;
  readonly #sums: readonly { readonly all: Int32Array; readonly left: Int32Array }[];

  constructor(match: Match) {
    this.#match = match;
    const given = stemsGiven(match);
    this.#sums = match.supplies.map(({ stems }, supplyIndex) => {
      const all = new Int32Array(stems.length + 1);
      const left = new Int32Array(stems.length + 1);
      for (let index = 0; index < stems.length; index++) {
        all[index + 1] = all[index] + stems[index];
        left[index + 1] = left[index] + stems[index] - given[match.network.firstSupply[supplyIndex] + index];
      }
      return { all, left };
    });
  }

  /** Stems cut from `earliest` to `latest`; none when they are the other way round. */
  all(supplyIndex: number, earliest: number, latest: number): number {
    if (latest < earliest) return 0;
    const { all } = this.#sums[supplyIndex];
    return all[this.#after(supplyIndex, latest)] - all[this.#after(supplyIndex, earliest - 1)];
  }

  /** Stems cut from `earliest` to `latest` that serve nobody; none when they are the other way round. */
  left(supplyIndex: number, earliest: number, latest: number): number {
    if (latest < earliest) return 0;
    const { left } = this.#sums[supplyIndex];
    return left[this.#after(supplyIndex, latest)] - left[this.#after(supplyIndex, earliest - 1)];
  }

  /** How many of the variety's cut days lie on or before `day`. */
  #after(supplyIndex: number, day: number): number {
    const { days } = this.#match.supplies[supplyIndex];
    let low = 0;
    let high = days.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (days[middle] <= day) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Stems that each supply node gives to somebody. */
export function stemsGiven({ network, solution }: Match): Int32Array {
  const given = new Int32Array(network.firstPassage);
  for (let arc = 0; arc < network.firstServingArc; arc++) given[network.flow.from[arc]] += solution.flow[arc];
  return given;
}
