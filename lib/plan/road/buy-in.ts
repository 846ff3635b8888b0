import type { Crop } from "#lib/domain/crop";
import type { Snapshot } from "#lib/domain/snapshot";
import { ROLES, type Role } from "#lib/domain/words";
import type { Asked } from "./fit";

type Bought = Pick<Asked, "role" | "cropId" | "booking">;

/** What a stem short is bought in as, and at what price. */
export type BuyInPrices = {
  /**
   * The crop whose price and bunch a need is bought in at: the named crop, else the crop with the median price among those whose usual
   * role it is (the lower of the two middle ones), else among all that can take the role; never one that the booking will not have. Null when
   * no crop can.
   */
  readonly cropOf: (need: Bought) => Crop | null;
  /** The price of one stem in cents; a cent when no crop can. */
  readonly centsOf: (need: Bought) => number;
};

/** Finds what each need is bought in as, among a farm's crops. */
export function buyInFinder(crops: Snapshot["crops"]): BuyInPrices {
  const ofId = new Map(crops.map((crop) => [crop.id, crop]));
  const ofRole = new Map<Role, Crop | null>(ROLES.map((role) => [role, middleCrop(crops, role)]));
  const cropOf = ({ cropId, role, booking: { unacceptableCropIds: refused } }: Bought): Crop | null => {
    if (cropId !== null && ofId.has(cropId)) return ofId.get(cropId) ?? null;
    const usual = ofRole.get(role) ?? null;
    if (!usual || !refused.includes(usual.id)) return usual;
    return middleCrop(
      crops.filter((crop) => !refused.includes(crop.id)),
      role,
    );
  };
  return { cropOf, centsOf: (need) => cropOf(need)?.buyInCents.count ?? 1 };
}

function middleCrop(crops: Snapshot["crops"], role: Role): Crop | null {
  const usual = crops.filter((crop) => crop.usualRole === role);
  const able = usual.length ? usual : crops.filter((crop) => crop.roles.includes(role));
  const byPrice = [...able].sort((a, b) => a.buyInCents.count - b.buyInCents.count || a.id - b.id);
  return byPrice[Math.floor((byPrice.length - 1) / 2)] ?? null;
}
