import type { Farm } from "#lib/domain/records/farm-settings";
import type { BuyInPrices } from "./buy-in";
import { CLAIMS, claimOf, weightOf } from "./claim";
import { AGE_CENTS, cropFitCents, WORST_FIT_CENTS } from "./fit";
import { hasStretch, holdOf } from "./hold-window";
import type { Need } from "./needs";
import { stretchCentsFinder } from "./stretch-cents";

/** What a stem short is weighed by: what one is bought in at, and all crops that could serve in its place. */
export type ShortPrices = Pick<BuyInPrices, "centsOf" | "middleCentsOf" | "allCrops">;

/** What a need costs at worst, in cents: to serve with a stem, and to go without one. */
export type WorstCents = {
  readonly worstFitCents: (need: Need) => number;
  /** @param worstFit  its worst fit, where that is known */
  readonly shortCents: (need: Need, worstFit?: number) => number;
};

/**
 * The worst fit of a need, a stem held to the end of its stretch among them, and what a stem short costs it: its buy-in price times the weight of the
 * booking's claim, and always more than the worst fit [M4]. In cents.
 */
export function shortCentsFinder(farm: Farm, buyIn: ShortPrices): WorstCents {
  const stretched = buyIn.allCrops.filter((crop) => hasStretch(holdOf(crop, farm)));
  const stretchCents = stretchCentsFinder(farm, buyIn);
  // Few crops are held at a stretch, and kinds of needs are nearly as many as needs: looked at anew they cost less than remembered.
  const centsByClaim = CLAIMS.map((claim) => stretched.map((crop) => stretchCents(crop, claim)));
  const oldestCents = (need: Need): number => {
    let most = AGE_CENTS;
    const cents = centsByClaim[CLAIMS.indexOf(claimOf(need.booking))];
    for (let index = 0; index < stretched.length; index++)
      if (cents[index] > most && cropFitCents(need, stretched[index]) !== null) most = cents[index];
    return most;
  };
  const worstFitCents = (need: Need) => WORST_FIT_CENTS + oldestCents(need);
  const shortCents = (need: Need, worstFit = worstFitCents(need)) => {
    const priced = Math.round(buyIn.centsOf(need) * weightOf(farm, claimOf(need.booking)));
    return Math.max(priced, worstFit + 1);
  };
  return { worstFitCents, shortCents };
}

/** The same, each need looked at once: for whoever matches the same needs day after day. A single match would gain nothing by it. */
export function rememberedCents(farm: Farm, buyIn: ShortPrices): WorstCents {
  const { worstFitCents, shortCents } = shortCentsFinder(farm, buyIn);
  const known = new Map<Need, { readonly worstFit: number; readonly short: number }>();
  const of = (need: Need) => {
    const found = known.get(need);
    if (found) return found;
    const worstFit = worstFitCents(need);
    const made = { worstFit, short: shortCents(need, worstFit) };
    known.set(need, made);
    return made;
  };
  return { worstFitCents: (need) => of(need).worstFit, shortCents: (need) => of(need).short };
}
