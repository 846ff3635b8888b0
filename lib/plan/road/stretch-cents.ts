import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { BuyInPrices } from "./buy-in";
import { type Claim, weightOf } from "./claim";
import { AGE_CENTS, WORST_FIT_CENTS } from "./fit";

/** Of its price, what a stem has lost that is held to the end of its stretch: our guess. */
const LOST_AT_A_STRETCH = 1 / 2;

/**
 * What the whole stretch of a crop's stem costs for a claim, in cents [M3]: half the stem's price by the weight of the claim, but so little that
 * with the worst fit it stays below a stem short of middling price in any role that it can take, and never less than its whole hold.
 */
export function stretchCentsFinder(
  farm: Farm,
  { middleCentsOf }: Pick<BuyInPrices, "middleCentsOf">,
): (crop: Crop, claim: Claim) => number {
  const known = new Map<Crop, number>();
  const cheapestRoleCents = (crop: Crop): number => {
    const cents = known.get(crop) ?? Math.min(...crop.roles.map(middleCentsOf));
    known.set(crop, cents);
    return cents;
  };
  return (crop, claim) => {
    const weight = weightOf(farm, claim);
    const lost = Math.round(crop.buyInCents.count * LOST_AT_A_STRETCH * weight);
    const below = Math.round(cheapestRoleCents(crop) * weight) - WORST_FIT_CENTS - 1;
    return Math.max(AGE_CENTS, Math.min(lost, below));
  };
}
