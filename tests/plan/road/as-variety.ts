import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { ROLES } from "#lib/domain/words";

/** A crop as one of its varieties is, as rule M11 states it: field by field, whatever the variety says of itself. */
export function asVariety(variety: Variety, crop: Crop): Crop {
  const own = (days: number | null, ofCrop: Crop["holdDays"]) => (days === null ? ofCrop : { ...ofCrop, count: days });
  const roles = variety.roles.length > 0 ? variety.roles : crop.roles;
  const [first] = ROLES.filter((role) => roles.includes(role));
  return {
    ...crop,
    roles,
    usualRole: roles.includes(crop.usualRole) || first === undefined ? crop.usualRole : first,
    headSize: variety.headSize === null ? crop.headSize : variety.headSize,
    stemLength: variety.stemLength === null ? crop.stemLength : variety.stemLength,
    outOfWater: variety.outOfWater === null ? crop.outOfWater : variety.outOfWater,
    holdDays: own(variety.holdDays, crop.holdDays),
    stretchDays: own(variety.stretchDays, crop.stretchDays),
  };
}
