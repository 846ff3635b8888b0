import type { Crop } from "./records/crop";
import type { OwnTraits, Variety } from "./records/variety";
import { OWN } from "./sourced";
import { ROLES } from "./words";

/**
 * The crop as its variety is: what the variety says of itself stands in place of the crop's. Its usual role is the crop's if it has that one, else the
 * first of its own. The crop itself where the variety says nothing, and the same object for the same two rows, so that what did not change is known by it.
 */
export function cropAs(variety: Variety, crop: Crop): Crop {
  if (saysNothing(variety)) return crop;
  const known = found.get(variety);
  if (known?.of === crop) return known.as;
  const as = overruled(variety, crop);
  found.set(variety, { of: crop, as });
  return as;
}

const found = new WeakMap<Variety, { readonly of: Crop; readonly as: Crop }>();

/** The crops of a farm as they are, and beside them as those varieties are that say something of themselves. */
export function allAs(crops: readonly Crop[], varieties: readonly Variety[]): readonly Crop[] {
  const known = foundOfAll.get(varieties);
  if (known?.of === crops) return known.as;
  const as = allAsTheyAre(crops, varieties);
  foundOfAll.set(varieties, { of: crops, as });
  return as;
}

const foundOfAll = new WeakMap<readonly Variety[], { readonly of: readonly Crop[]; readonly as: readonly Crop[] }>();

function allAsTheyAre(crops: readonly Crop[], varieties: readonly Variety[]): readonly Crop[] {
  const told = varieties.filter((variety) => !saysNothing(variety));
  if (told.length === 0) return crops;
  const cropOf = new Map(crops.map((crop) => [crop.id, crop]));
  const asThey = told.flatMap((variety) => {
    const crop = cropOf.get(variety.cropId);
    return crop ? [cropAs(variety, crop)] : [];
  });
  return [...crops, ...asThey];
}

const saysNothing = ({ roles, headSize, stemLength, outOfWater, holdDays, stretchDays }: OwnTraits): boolean =>
  roles.length === 0 &&
  headSize === null &&
  stemLength === null &&
  outOfWater === null &&
  holdDays === null &&
  stretchDays === null;

function overruled(variety: OwnTraits, crop: Crop): Crop {
  const roles = variety.roles.length ? variety.roles : crop.roles;
  const usualRole = roles.includes(crop.usualRole) ? crop.usualRole : ROLES.find((role) => roles.includes(role));
  return {
    ...crop,
    roles,
    usualRole: usualRole ?? crop.usualRole,
    headSize: variety.headSize ?? crop.headSize,
    stemLength: variety.stemLength ?? crop.stemLength,
    outOfWater: variety.outOfWater ?? crop.outOfWater,
    holdDays: variety.holdDays === null ? crop.holdDays : { count: variety.holdDays, ...OWN },
    stretchDays: variety.stretchDays === null ? crop.stretchDays : { count: variety.stretchDays, ...OWN },
  };
}
