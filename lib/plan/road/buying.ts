import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Colour } from "#lib/domain/words";
import type { Bought, BuyInPrices } from "./buy-in";
import type { Gap } from "./gaps";

/**
 * What to buy in for a gap: whole bunches, so there may be stems over. `crop` and `colour` are what it is priced, bunched and ordered as: the named crop, or
 * one of middling price for the role that is to be had. `orderBy` is a day number: the farm's ordering days before the event, and where its last cut is not on the day of the farm's habit, as long before it.
 */
export type BuyIn = {
  readonly gap: Gap;
  readonly crop: Crop;
  /** Null where any colour will do. */
  readonly colour: Colour | null;
  readonly bunchCount: number;
  readonly boughtStems: number;
  readonly leftOverStems: number;
  readonly costCents: number;
  readonly orderBy: number;
};

/** What to buy in for every gap, in order of the day to order by [B1]. A gap for which nothing is to be had is left out. */
export function buying(farm: Farm, gaps: readonly Gap[], { boughtAs }: Pick<BuyInPrices, "boughtAs">): BuyIn[] {
  return gaps
    .flatMap((gap) => {
      const bought = boughtAs(gap.need);
      return bought ? [buyIn(farm, gap, bought)] : [];
    })
    .sort((a, b) => a.orderBy - b.orderBy);
}

/** Whole bunches of a crop for so many stems, and what they cost. */
export function bunchesOf(crop: Crop, stems: number): Pick<BuyIn, "bunchCount" | "boughtStems" | "costCents"> {
  const bunchCount = Math.ceil(stems / crop.bunchStems.count);
  const boughtStems = bunchCount * crop.bunchStems.count;
  return { bunchCount, boughtStems, costCents: Math.round(boughtStems * crop.buyInCents.count) };
}

function buyIn(farm: Farm, gap: Gap, { crop, colour }: Bought): BuyIn {
  const bunches = bunchesOf(crop, gap.shortStems);
  return {
    gap,
    crop,
    colour,
    ...bunches,
    leftOverStems: bunches.boughtStems - gap.shortStems,
    orderBy: gap.need.eventDay - farm.orderDaysAhead - (gap.need.leadDays - farm.leadDays),
  };
}
