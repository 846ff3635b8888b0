import type { BloomCurve } from "#lib/domain/records/curve";
import { OWN } from "#lib/domain/sourced";

/** A bloom curve as it is adopted: timing or yield that a what-if has moved is no longer its source's number but the farm's own. */
export function ownCurve(curve: BloomCurve, before: BloomCurve | undefined): BloomCurve {
  const isSame = (part: (curve: BloomCurve) => unknown) =>
    before !== undefined && JSON.stringify(part(curve)) === JSON.stringify(part(before));
  return {
    ...curve,
    timingOrigin: isSame(({ anchor, laterDays }) => [anchor, laterDays]) ? curve.timingOrigin : OWN,
    yieldOrigin: isSame(({ stemsPerPlantByWeek }) => stemsPerPlantByWeek) ? curve.yieldOrigin : OWN,
  };
}
