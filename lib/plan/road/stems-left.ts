import type { Match } from "./match";

/**
 * Stems of each variety by day, and how many the match leaves free, summed ahead day after day so that any run of days is one
 * subtraction. Days are day numbers, both ends included; `supplyIndex` counts varieties in `match.supplies`. A run turned round has none.
 */
export class StemsByDay {
  readonly #firstDay: number;
  readonly #dayCount: number;
  readonly #all: Int32Array;
  readonly #left: Int32Array;

  constructor(match: Match) {
    const { supplies, network } = match;
    const given = network.stemsGiven(match.solution);
    const first = supplies.reduce((day, { days }) => Math.min(day, days[0]), Number.POSITIVE_INFINITY);
    const last = supplies.reduce((day, { days }) => Math.max(day, days[days.length - 1]), Number.NEGATIVE_INFINITY);
    this.#firstDay = supplies.length ? first : 0;
    this.#dayCount = supplies.length ? last - first + 1 : 0;
    // One place more than there are days: place 0 of a variety is the evening before the first.
    const places = this.#dayCount + 1;
    this.#all = new Int32Array(supplies.length * places);
    this.#left = new Int32Array(supplies.length * places);
    const [sumOfAll, sumOfLeft] = [this.#all, this.#left];
    for (let supplyIndex = 0; supplyIndex < supplies.length; supplyIndex++) {
      const { days, stems } = supplies[supplyIndex];
      const start = supplyIndex * places;
      for (let index = 0; index < days.length; index++) {
        const place = start + days[index] - this.#firstDay + 1;
        sumOfAll[place] = stems[index];
        sumOfLeft[place] = stems[index] - given[network.nodeOf(supplyIndex, index)];
      }
      for (let place = start + 1; place < start + places; place++) {
        sumOfAll[place] += sumOfAll[place - 1];
        sumOfLeft[place] += sumOfLeft[place - 1];
      }
    }
  }

  /** Stems cut from `earliest` to `latest`. */
  all(supplyIndex: number, earliest: number, latest: number): number {
    if (latest < earliest) return 0;
    return this.#all[this.#place(supplyIndex, latest)] - this.#all[this.#place(supplyIndex, earliest - 1)];
  }

  /** Stems cut from `earliest` to `latest` that serve nobody. */
  left(supplyIndex: number, earliest: number, latest: number): number {
    if (latest < earliest) return 0;
    return this.#left[this.#place(supplyIndex, latest)] - this.#left[this.#place(supplyIndex, earliest - 1)];
  }

  /** Where the sum up to the evening of `day` stands. */
  #place(supplyIndex: number, day: number): number {
    const inSeason = Math.min(Math.max(day - this.#firstDay + 1, 0), this.#dayCount);
    return supplyIndex * (this.#dayCount + 1) + inSeason;
  }
}
