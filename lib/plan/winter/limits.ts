import type { Farm } from "#lib/domain/farm";
import type { SwitchLimit } from "#lib/maths/switch-flow/problem";
import type { WinterBed } from "./beds";
import type { WinterCost } from "./costs";

/** What the farm has at hand of one thing, as a limit on the switches, in words for the grower. */
export type WinterLimit = SwitchLimit & { readonly words: string };

/** Limits are reckoned in thousandths (litres, thousandths of an hour), rounded so that a choice never takes more than there is. */
const THOUSANDTHS = 1000;
const FORGIVEN = 1e-6;

/**
 * What the farm has for the winter, as limits on the beds that may be kept: leaves, tarps, hours of keeping and digging over all beds, and
 * the share of candidate beds that may stay in [K3]. `openBeds` are the places of the beds without a flag, in the order of the switches.
 */
export function winterLimits({ winter }: Farm, beds: readonly WinterBed[], openBeds: readonly number[]): WinterLimit[] {
  const limit = (atHand: number | null, takes: (cost: WinterCost) => number, words: string): WinterLimit[] => {
    if (atHand === null) return [];
    const allDug = beds.reduce((sum, { dig }) => sum + takes(dig), 0);
    const weights = openBeds.map((bed) => {
      const { keep, dig } = beds[bed];
      return Math.ceil((takes(keep) - takes(dig)) * THOUSANDTHS - FORGIVEN);
    });
    return [{ weights, atMost: Math.floor((atHand - allDug) * THOUSANDTHS + FORGIVEN), words }];
  };
  const { leafCubicMetresAtHand, tarpSquareMetresAtHand, hoursAtHand, keepShareAtMost } = winter;
  const mostBeds = keepShareAtMost === null ? null : Math.floor(keepShareAtMost * beds.length + FORGIVEN);
  return [
    ...limit(leafCubicMetresAtHand, (cost) => cost.leafCubicMetres, `${leafCubicMetresAtHand} m3 of leaves at hand`),
    ...limit(tarpSquareMetresAtHand, (cost) => cost.tarpSquareMetres, `${tarpSquareMetresAtHand} m2 of tarp at hand`),
    ...limit(hoursAtHand, (cost) => cost.hours, `${hoursAtHand} hours at hand for keeping and digging`),
    ...(mostBeds === null
      ? []
      : [
          {
            weights: openBeds.map(() => 1),
            atMost: mostBeds,
            words: `at most ${mostBeds} of ${beds.length} beds kept`,
          },
        ]),
  ];
}
