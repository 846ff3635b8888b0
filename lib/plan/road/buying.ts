import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import type { Gap } from "./gaps";
import type { Need } from "./needs";

/**
 * What to buy in for a gap: whole bunches, so there may be stems over. `crop` is the one it is priced and bunched as: the named crop, or one of
 * middling price for the role. `orderBy` is a day number, the farm's ordering days before the event.
 */
export type BuyIn = {
  readonly gap: Gap;
  readonly crop: Crop;
  readonly bunchCount: number;
  readonly boughtStems: number;
  readonly leftOverStems: number;
  readonly costCents: number;
  readonly orderBy: number;
};

/** What to buy in for every gap, in order of the day to order by [B1]. A gap that no crop could fill is left out. */
export function buying(farm: Farm, gaps: readonly Gap[], buyInCrop: (need: Need) => Crop | null): BuyIn[] {
  return gaps
    .flatMap((gap) => {
      const crop = buyInCrop(gap.need);
      return crop ? [buyIn(farm, gap, crop)] : [];
    })
    .sort((a, b) => a.orderBy - b.orderBy);
}

/** Whole bunches of a crop for so many stems, and what they cost. */
export function bunchesOf(crop: Crop, stems: number): Pick<BuyIn, "bunchCount" | "boughtStems" | "costCents"> {
  const bunchCount = Math.ceil(stems / crop.bunchStems.count);
  const boughtStems = bunchCount * crop.bunchStems.count;
  return { bunchCount, boughtStems, costCents: Math.round(boughtStems * crop.buyInCents.count) };
}

function buyIn(farm: Farm, gap: Gap, crop: Crop): BuyIn {
  const bunches = bunchesOf(crop, gap.shortStems);
  return {
    gap,
    crop,
    ...bunches,
    leftOverStems: bunches.boughtStems - gap.shortStems,
    orderBy: gap.need.eventDay - farm.orderDaysAhead,
  };
}
