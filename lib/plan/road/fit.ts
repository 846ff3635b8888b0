import type { Crop } from "#lib/domain/records/crop";
import { COLOURS, type Colour, HEAD_SIZES } from "#lib/domain/words";
import type { Hold } from "./hold-window";
import type { Need } from "./needs";

/**
 * How good a fit a stem is for a need, in cents: what the designer would pay to have the better one. All four are our
 * own guesses, small beside a bought stem; they decide only between fits, since going without always costs more [M4].
 */
export const OTHER_CROP_CENTS = 6;
export const OTHER_ROLE_CENTS = 2;
export const NEXT_COLOUR_CENTS = 1;
/** From a stem cut as late as the lead days allow (0) to one held as long as it keeps as good as fresh (all of it). */
export const AGE_CENTS = 8;

/** What no fit can exceed, age aside: another crop in an unusual role, in the last of all colours. */
export const WORST_FIT_CENTS = OTHER_CROP_CENTS + OTHER_ROLE_CENTS + NEXT_COLOUR_CENTS * (COLOURS.length - 1);

/** What a need asks of a stem, the amount and the day aside. */
export type Asked = Pick<Need, "role" | "cropId" | "cropOnly" | "asks" | "colours"> & {
  readonly booking: Pick<Need["booking"], "unacceptableCropIds" | "unacceptableColours">;
};

/**
 * Whether a stem has what is asked of it: one of the heads, if any are named, and each of the rest. What nobody has told of a crop is taken to do [M2].
 * @param asks  as of a need
 */
export function hasAsked(
  asks: Need["asks"],
  { headSize, stemLength, outOfWater }: Pick<Crop, "headSize" | "stemLength" | "outOfWater">,
): boolean {
  if (asks.length === 0) return true;
  const heads = HEAD_SIZES.filter((size) => asks.includes(`${size} head`));
  return (
    (heads.length === 0 || headSize === null || heads.includes(headSize)) &&
    !(asks.includes("long stem") && stemLength === "short") &&
    !(asks.includes("out of water") && outOfWater === "wilts")
  );
}

/** The crop's part of the fit: it can take the role, has what is asked of the stem, is not unacceptable, and is the named one where no other will do. */
export function cropFitCents(asked: Asked, crop: Crop): number | null {
  return hasAsked(asked.asks, crop) ? plainFitCents(asked, crop) : null;
}

/** The crop's part of the fit were nothing asked of the stem. */
export function plainFitCents({ role, cropId, cropOnly, booking }: Asked, crop: Crop): number | null {
  if (!crop.roles.includes(role) || booking.unacceptableCropIds.includes(crop.id)) return null;
  const isNamed = cropId === null || cropId === crop.id;
  if (cropOnly && !isNamed) return null;
  return (isNamed ? 0 : OTHER_CROP_CENTS) + (crop.usualRole === role ? 0 : OTHER_ROLE_CENTS);
}

/** The colour's part of the fit: by its place among the colours accepted; none named accepts all alike. What the booking refuses never fits. */
export function colourFitCents({ colours, booking }: Asked, colour: Colour): number | null {
  if (booking.unacceptableColours.includes(colour)) return null;
  if (colours.length === 0) return 0;
  const rank = colours.indexOf(colour);
  return rank < 0 ? null : rank * NEXT_COLOUR_CENTS;
}

/**
 * What age costs, in cents: nothing for the freshest stem allowed, `AGE_CENTS` for one held the crop's whole hold, and past it in a straight line up to
 * `wholeStretchCents` for one held to the end of its stretch [M3].
 */
export function ageCents(
  heldDays: number,
  leadDays: number,
  { days, stretchDays }: Hold,
  wholeStretchCents: number,
): number {
  if (heldDays > days)
    return AGE_CENTS + Math.round(((wholeStretchCents - AGE_CENTS) * (heldDays - days)) / (stretchDays - days));
  return days <= leadDays ? 0 : Math.round((AGE_CENTS * (heldDays - leadDays)) / (days - leadDays));
}
