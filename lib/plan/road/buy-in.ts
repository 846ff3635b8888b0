import type { Crop } from "#lib/domain/records/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES, type Role } from "#lib/domain/words";
import type { Asked } from "./fit";

/** What a stem short is bought in as, and at what price. */
export type BuyInPrices = {
  /** All crops of the farm. */
  readonly crops: Snapshot["crops"];
  /**
   * The price of one stem in cents, by which a claim is weighed: the named crop's, else the median among the crops whose usual role it is (the
   * lower of the two middle ones), else among all that can take the role; a cent when no crop can. What a booking refuses does not matter:
   * a client who will not have lilies has no weaker claim.
   */
  readonly centsOf: (need: Pick<Asked, "role" | "cropId">) => number;
  /**
   * The crop that is bought: the named one, else the middle one by price of those that the booking will have, of the same two lists as the price.
   * Null when no crop can be.
   */
  readonly cropOf: (need: Pick<Asked, "role" | "cropId" | "cropOnly" | "booking">) => Crop | null;
};

/** Finds what each need is bought in as, among a farm's crops. */
export function buyInFinder(crops: Snapshot["crops"]): BuyInPrices {
  const ofId = new Map(crops.map((crop) => [crop.id, crop]));
  const inOrder = [...crops].sort(byPrice);
  const middleOf = new Map<Role, Crop | null>(ROLES.map((role) => [role, middleCrop(inOrder, role)]));
  const named = (cropId: number | null) => (cropId === null ? null : (ofId.get(cropId) ?? null));
  return {
    crops,
    centsOf: ({ cropId, role }) => (named(cropId) ?? middleOf.get(role))?.buyInCents.count ?? 1,
    cropOf: ({ cropId, cropOnly, role, booking: { unacceptableCropIds: refused } }) => {
      const crop = named(cropId);
      const isRefused = (one: Crop) => refused.includes(one.id);
      if (crop && !isRefused(crop)) return crop;
      if (cropOnly) return null;
      const middle = middleOf.get(role) ?? null;
      if (!middle || !isRefused(middle)) return middle;
      return middleCrop(
        inOrder.filter((one) => !isRefused(one)),
        role,
      );
    },
  };
}

/** The middle one of the crops whose usual role it is, else of those that can take it. @param inOrder  crops by price */
function middleCrop(inOrder: readonly Crop[], role: Role): Crop | null {
  const usual = inOrder.filter((crop) => crop.usualRole === role);
  const able = usual.length ? usual : inOrder.filter((crop) => crop.roles.includes(role));
  return able[Math.floor((able.length - 1) / 2)] ?? null;
}

/** By price; of equal ones the smaller bunch first, then by name, so that the order in which crops were written down does not matter. */
const byPrice = (a: Crop, b: Crop): number =>
  a.buyInCents.count - b.buyInCents.count ||
  a.bunchStems.count - b.bunchStems.count ||
  (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
