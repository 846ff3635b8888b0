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

function buyIn(farm: Farm, gap: Gap, crop: Crop): BuyIn {
  const bunchCount = Math.ceil(gap.shortStems / crop.bunchStems.count);
  const boughtStems = bunchCount * crop.bunchStems.count;
  return {
    gap,
    crop,
    bunchCount,
    boughtStems,
    leftOverStems: boughtStems - gap.shortStems,
    costCents: Math.round(boughtStems * crop.buyInCents.count),
    orderBy: gap.need.eventDay - farm.orderDaysAhead,
  };
}
