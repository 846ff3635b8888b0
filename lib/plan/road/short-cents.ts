import type { Farm } from "#lib/domain/records/farm-settings";
import { STATUSES } from "#lib/domain/words";
import type { BuyInPrices } from "./buy-in";
import { AGE_CENTS, cropFitCents, WORST_FIT_CENTS } from "./fit";
import { hasStretch, holdOf } from "./hold-window";
import type { Need } from "./needs";
import { stretchCentsFinder, weightOf } from "./stretch-cents";

/** What a stem short is weighed by: what one is bought in at, and all crops that could serve in its place. */
export type ShortPrices = Pick<BuyInPrices, "centsOf" | "middleCentsOf" | "crops">;

/** What a need costs at worst, in cents: to serve with a stem, and to go without one. */
type WorstCents = {
  readonly worstFitCents: (need: Need) => number;
  /** @param worstFit  its worst fit, where that is known */
  readonly shortCents: (need: Need, worstFit?: number) => number;
};

/**
 * The worst fit of a need, a stem held to the end of its stretch among them, and what a stem short costs it: its buy-in price times the weight of the
 * booking's claim, and always more than the worst fit [M4]. In cents.
 */
export function shortCentsFinder(farm: Farm, buyIn: ShortPrices): WorstCents {
  const stretched = buyIn.crops.filter((crop) => hasStretch(holdOf(crop, farm)));
  const stretchCents = stretchCentsFinder(farm, buyIn);
  // By status, then by kind: a key of both in one string, made for thousands of needs, costs more than all else here.
  const known = new Map(STATUSES.map((status) => [status, new Map<string, number>()]));
  const oldestCents = (need: Need): number => {
    if (stretched.length === 0) return AGE_CENTS;
    const { status } = need.booking;
    const found = known.get(status)?.get(need.kind);
    if (found !== undefined) return found;
    const ages = stretched.map((crop) => (cropFitCents(need, crop) === null ? 0 : stretchCents(crop, status)));
    const cents = Math.max(AGE_CENTS, ...ages);
    known.get(status)?.set(need.kind, cents);
    return cents;
  };
  const worstFitCents = (need: Need) => WORST_FIT_CENTS + oldestCents(need);
  const shortCents = (need: Need, worstFit = worstFitCents(need)) => {
    const priced = Math.round(buyIn.centsOf(need) * weightOf(farm, need.booking.status));
    return Math.max(priced, worstFit + 1);
  };
  return { worstFitCents, shortCents };
}
