import type { Bed } from "#lib/domain/bed";
import type { Farm } from "#lib/domain/farm";
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
import { clumpCount } from "./costs";

/** What may run short in the winter. */
export type WinterResource = "leaves" | "tarp" | "hours" | "beds";

/** What the farm has at hand of one thing, as a limit on the beds that are kept, with its words for the grower. A weight for each candidate bed. */
export type WinterLimit = SwitchLimit & { readonly resource: WinterResource; readonly words: string };

/**
 * What the farm has for the winter: leaves, tarps, hours of keeping and digging over all beds, and the share of candidate beds that may stay
 * in [K3]. Sizes, rates and what is at hand are taken as the numbers that were meant and summed as fractions, so that what fits exactly fits.
 */
export function winterLimits({ winter }: Pick<Farm, "winter">, beds: readonly WinterBed[]): WinterLimit[] {
  const { leafCubicMetresAtHand, tarpSquareMetresAtHand, hoursAtHand, keepShareAtMost } = winter;
  const [leafDepth, coverHours, ...clumpRates] = [
    winter.leafDepthMetres,
    winter.coverHoursPerSquareMetre,
    winter.digClumpsPerHour,
    winter.divideClumpsPerHour,
    winter.replantTubersPerHour,
  ].map(asMeant);
  const none = whole(0);
  const diggingHours = ({ plantings }: WinterBed) => {
    const clumps = whole(clumpCount(plantings.map(({ dug }) => dug.planting)));
    return clumpRates.map((rate) => quotient(clumps, rate)).reduce(sum);
  };
  const limit = (
    resource: WinterResource,
    atHand: number | null,
    words: string,
    keptTakes: (bed: WinterBed) => Fraction,
    dugTakes: (bed: WinterBed) => Fraction = () => none,
  ): WinterLimit[] => {
    if (atHand === null) return [];
    const more = beds.map((bed) => difference(keptTakes(bed), dugTakes(bed)));
    const left = beds.map(dugTakes).reduce(difference, asMeant(atHand));
    const [atMost, ...weights] = inCommonParts([left, ...more]);
    return [{ resource, weights, atMost, words }];
  };
  return [
    ...limit("leaves", leafCubicMetresAtHand, `${leafCubicMetresAtHand} m3 of leaves at hand`, ({ bed }) =>
      product(area(bed), leafDepth),
    ),
    ...limit("tarp", tarpSquareMetresAtHand, `${tarpSquareMetresAtHand} m2 of tarp at hand`, ({ bed }) => area(bed)),
    ...limit(
      "hours",
      hoursAtHand,
      `${hoursAtHand} hours at hand for keeping and digging`,
      ({ bed }) => product(area(bed), coverHours),
      diggingHours,
    ),
    ...(keepShareAtMost === null ? [] : [bedLimit(mostBedsKept(keepShareAtMost, beds.length), beds.length)]),
  ];
}

/** The limits as they bear on some of the beds alone, all others dug. */
export const limitsOn = (limits: readonly WinterLimit[], bedPlaces: readonly number[]): WinterLimit[] =>
  limits.map((limit) => ({ ...limit, weights: bedPlaces.map((bed) => limit.weights[bed]) }));

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
  words: `at most ${mostBeds} of ${bedCount} beds kept`,
});

const area = ({ lengthMetres, widthMetres }: Bed): Fraction => product(asMeant(lengthMetres), asMeant(widthMetres));
