import { nearColours } from "#lib/domain/near-colours";
import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import type { Colour } from "#lib/domain/words";
import { type Bought, type BuyInPrices, buyInFinder } from "./buy-in";
import type { Gap } from "./gaps";

/**
 * A gap for which nothing is to be had, and what would be: a near colour, the nearest month, or another crop than the one that is named. `month` is that of
 * the day on which it would have to arrive, 1 to 12. Without any of the three, no crop on the farm's list could be bought for it at all.
 */
export type NotToBeHad = {
  readonly gap: Gap;
  readonly month: number;
  readonly nearColour: { readonly colour: Colour; readonly crop: Crop } | null;
  readonly otherMonth: { readonly month: number; readonly bought: Bought } | null;
  readonly otherCrop: Bought | null;
};

/** Every gap that cannot be bought in [B2], in their order. */
export function notToBeHad(snapshot: Snapshot, gaps: readonly Gap[]): NotToBeHad[] {
  const finder = buyInFinder(snapshot);
  return gaps.flatMap((gap) => {
    if (finder.boughtAs(gap.need)) return [];
    return [
      {
        gap,
        month: finder.monthOf(gap.need),
        nearColour: nearColour(gap, finder),
        otherMonth: otherMonth(gap, finder),
        otherCrop: gap.need.cropOnly ? finder.boughtAs({ ...gap.need, cropOnly: false }) : null,
      },
    ];
  });
}

function nearColour({ need }: Gap, { boughtAs }: BuyInPrices): NotToBeHad["nearColour"] {
  for (const colour of nearColours(need.colours)) {
    const bought = boughtAs({ ...need, colours: [colour] });
    if (bought) return { colour, crop: bought.crop };
  }
  return null;
}

/** The nearest month in which something is to be had; of two as near the later one, since what is booked can rather be put off. */
function otherMonth({ need }: Gap, { boughtAs, monthOf }: BuyInPrices): NotToBeHad["otherMonth"] {
  const asked = monthOf(need);
  for (let away = 1; away <= 6; away++)
    for (const shift of [away, -away]) {
      const month = ((asked + shift + 11) % 12) + 1;
      const bought = boughtAs(need, month);
      if (bought) return { month, bought };
    }
  return null;
}
