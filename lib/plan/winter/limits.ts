import type { Bed } from "#lib/domain/records/bed";
import type { Farm } from "#lib/domain/records/farm-settings";
import {
  asMeant,
  difference,
  type Fraction,
  floored,
  inCommonParts,
  product,
  quotient,
  sum,
  whole,
} from "#lib/maths/fraction";
import { keepsTo, type SwitchLimit } from "#lib/maths/switch-flow/problem";
import type { WinterBed } from "./beds";
import { clumpCount, winterSurvival } from "./costs";

/** What may run short in the winter. */
export type WinterResource = "leaves" | "tarp" | "hours" | "beds";

/**
 * What the farm has at hand of one thing, as a limit on the beds that are kept; a weight for each candidate bed. `atHand` is in cubic metres
 * of leaves, square metres of tarp, hours, or beds that may be kept.
 */
export type WinterLimit = SwitchLimit & { readonly resource: WinterResource; readonly atHand: number };

/** A limit as one choice meets it: what is at hand, and what the choice takes, in the same unit. */
export type LimitMet = Pick<WinterLimit, "resource" | "atHand"> & { readonly takes: number };

/**
 * What the farm has for the winter: leaves, tarps, hours of keeping and digging over all beds, and the share of candidate beds that may stay
 * in [K3]. Sizes, rates and what is at hand are taken as the numbers that were meant and summed as fractions, so that what fits exactly fits.
 */
export function winterLimits({ winter }: Pick<Farm, "winter">, beds: readonly WinterBed[]): WinterLimit[] {
  const { leafCubicMetresAtHand, tarpSquareMetresAtHand, hoursAtHand, keepShareAtMost } = winter;
  const { leaves, tarp, keptHours, dugHours } = exactly(winter);
  const limit = (
    resource: WinterResource,
    atHand: number | null,
    keptTakes: (bed: WinterBed) => Fraction,
    dugTakes: (bed: WinterBed) => Fraction = () => whole(0),
  ): WinterLimit[] => {
    if (atHand === null) return [];
    const more = beds.map((bed) => difference(keptTakes(bed), dugTakes(bed)));
    const left = beds.map(dugTakes).reduce(difference, asMeant(atHand));
    const [atMost, ...weights] = inCommonParts([left, ...more]);
    return [{ resource, weights, atMost, atHand }];
  };
  return [
    ...limit("leaves", leafCubicMetresAtHand, leaves),
    ...limit("tarp", tarpSquareMetresAtHand, tarp),
    ...limit("hours", hoursAtHand, keptHours, dugHours),
    ...(keepShareAtMost === null ? [] : [bedLimit(mostBedsKept(keepShareAtMost, beds.length), beds.length)]),
  ];
}

/** The limits as they bear on some of the beds alone, all others dug. */
export const limitsOn = (limits: readonly WinterLimit[], bedPlaces: readonly number[]): WinterLimit[] =>
  limits.map((limit) => ({ ...limit, weights: bedPlaces.map((bed) => limit.weights[bed]) }));

/** What a choice takes of what a limit is on: leaves and tarp where kept, hours everywhere, and the beds kept themselves. */
export function limitMet({ resource, atHand }: WinterLimit, beds: readonly WinterBed[], isKept: readonly boolean[]) {
  const takes = beds.reduce((total, { keep, dig }, bed) => {
    const cost = isKept[bed] ? keep : dig;
    if (resource === "beds") return total + (isKept[bed] ? 1 : 0);
    if (resource === "hours") return total + cost.hours;
    return total + (resource === "leaves" ? cost.leafCubicMetres : cost.tarpSquareMetres);
  }, 0);
  return { resource, atHand, takes } satisfies LimitMet;
}

/** What is not enough when these of the candidate beds are kept: the same rule as the search goes by [K3]. */
export const runsShort = (limits: readonly WinterLimit[], isKept: readonly boolean[]): WinterResource[] =>
  limits.filter((limit) => !keepsTo([limit], isKept)).map(({ resource }) => resource);

/** How many of so many candidate beds a share allows: whole beds, rounded down. */
export const mostBedsKept = (keepShareAtMost: number, bedCount: number): number =>
  Number(floored(product(asMeant(keepShareAtMost), whole(bedCount))));

const bedLimit = (mostBeds: number, bedCount: number): WinterLimit => ({
  resource: "beds",
  weights: Array.from({ length: bedCount }, () => 1n),
  atMost: BigInt(mostBeds),
  atHand: mostBeds,
});

/** What a bed takes, as `costs.ts` reckons it, in fractions. */
function exactly(winter: Farm["winter"]) {
  const laidDepth = quotient(asMeant(winter.leafDepthMetres), difference(whole(1), asMeant(winter.leafSettlingShare)));
  const [leafEdge, tarpEdge, haulHours, coverHours, replantShare] = [
    winter.leafEdgeMetres,
    winter.tarpEdgeMetres,
    winter.leafHaulHoursPerCubicMetre,
    winter.coverHoursPerSquareMetre,
    winter.replantDeadShare,
  ].map(asMeant);
  const clumpRates = [winter.digClumpsPerHour, winter.divideClumpsPerHour, winter.replantTubersPerHour].map(asMeant);
  const leaves = ({ bed }: WinterBed) => product(area(bed, leafEdge), laidDepth);
  const deadClumps = ({ plantings }: WinterBed) =>
    plantings
      .map(({ kept: { planting } }) =>
        product(whole(planting.plantCount), difference(whole(1), asMeant(winterSurvival(planting, { winter })))),
      )
      .reduce(sum);
  return {
    leaves,
    tarp: ({ bed }: WinterBed) => area(bed, tarpEdge),
    keptHours: (bed: WinterBed) =>
      [
        product(leaves(bed), haulHours),
        product(area(bed.bed), coverHours),
        quotient(product(deadClumps(bed), replantShare), clumpRates[2]),
      ].reduce(sum),
    dugHours: ({ plantings }: WinterBed) => {
      const clumps = whole(clumpCount(plantings.map(({ dug }) => dug.planting)));
      return clumpRates.map((rate) => quotient(clumps, rate)).reduce(sum);
    },
  };
}

/** A bed's square metres, with so much past every edge. */
const area = ({ lengthMetres, widthMetres }: Bed, edge: Fraction = whole(0)): Fraction =>
  product(sum(asMeant(lengthMetres), sum(edge, edge)), sum(asMeant(widthMetres), sum(edge, edge)));
