import type { SwitchBounds } from "./bounds";
import type { Floor } from "./floors";
import type { SwitchLimit } from "./problem";

/**
 * What proves that no selection of a case costs less than a bound: weights on floors, whole numbers of `parts`ths, and on limits, in parts finer by
 * `finer`. The floors of a part of the network weigh one together at most; what is left of it costs 0 or more. A limit costs its weight for each
 * unit that it is passed by.
 */
export type Weights = {
  readonly kind: "costs";
  readonly parts: bigint;
  readonly floors: readonly { readonly floor: Floor; readonly weight: bigint }[];
  readonly finer: bigint;
  readonly limits: readonly bigint[];
};

/** What proves that no selection of a case keeps to the limits: with these weights they are passed by more than nothing at every selection. */
export type Barred = { readonly kind: "barred"; readonly limits: readonly bigint[] };

/** A case split in two: a switch off, and on. */
type Cases = { readonly kind: "cases"; readonly index: number; readonly off: Case; readonly on: Case };

/** Some switches are bound: why no such selection is better. The case in which none is bound proves a search. */
export type Case = { proof: Weights | Barred | Cases };

/** A sum over the switches that are on, with a constant: whole numbers of some parts. */
export type Terms = { readonly constant: bigint; readonly perSwitch: readonly bigint[] };

/** A floor's row over all switches, in whole numbers. */
export type Row = {
  readonly constant: bigint;
  readonly switches: ArrayLike<number>;
  readonly slopes: readonly bigint[];
};

/**
 * What a selection costs at least by these weights, in `parts × finer`ths: its own cost, what each floor says, and what the limits cost where they are
 * passed. Where a limit is kept that takes off, so it holds for every selection that keeps to them.
 * @param own   what a selection costs beside the parts with floors
 * @param rows  the rows of the weighed floors, in their order
 */
export function weighed(
  { parts, floors, finer, limits: limitWeights }: Weights,
  own: Terms,
  rows: readonly Row[],
  limits: readonly SwitchLimit[],
): Terms {
  let constant = own.constant * parts;
  const perSwitch = own.perSwitch.map((cost) => cost * parts);
  floors.forEach(({ weight }, place) => {
    const { constant: ofRow, switches, slopes } = rows[place];
    constant += weight * ofRow;
    for (let at = 0; at < slopes.length; at++) perSwitch[switches[at]] -= weight * slopes[at];
  });
  const passed = passedBy(limitWeights, limits, perSwitch.length);
  return {
    constant: constant * finer + passed.constant,
    perSwitch: perSwitch.map((cost, index) => cost * finer + passed.perSwitch[index]),
  };
}

/** By how much selections pass the limits, weighed. */
export function passedBy(weights: readonly bigint[], limits: readonly SwitchLimit[], switchCount: number): Terms {
  let constant = 0n;
  const perSwitch: bigint[] = Array.from({ length: switchCount }, () => 0n);
  limits.forEach((limit, place) => {
    if (weights[place] === 0n) return;
    constant -= weights[place] * limit.atMost;
    for (let index = 0; index < switchCount; index++) perSwitch[index] += weights[place] * limit.weights[index];
  });
  return { constant, perSwitch };
}

/** The least that the terms come to within bounds on the switches. */
export const leastOf = ({ constant, perSwitch }: Terms, { lowers, uppers }: SwitchBounds): bigint =>
  perSwitch.reduce((sum, cost, index) => ((cost < 0n ? uppers[index] : lowers[index]) ? sum + cost : sum), constant);

/** The least whole number that is no less than so many parts: selections cost whole numbers. */
export const roundedUp = (amount: bigint, parts: bigint): number =>
  Number(amount > 0n ? (amount + parts - 1n) / parts : amount / parts);
