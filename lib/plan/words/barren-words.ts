import { toDay } from "#lib/domain/day";
import type { Problem } from "#lib/domain/problem";
import { firstCutDay, type Grown } from "#lib/plan/road/grown";

/** Why a planting is forecast at nothing, and how to mend it [F7]. */
export function barrenInWords({ planting, bed, crop, variety, curve }: Grown): Problem {
  const place = `bed ${bed.name}, ${crop.name} ${variety.name}`;
  const message = curve
    ? `planted on ${planting.plantedOn} it would be cut from ${toDay(firstCutDay(curve, planting))}, not in ${planting.seasonYear}: it is forecast at 0 stems. Mend the planting day or the season.`
    : `no bloom curve for "${planting.treatment}": it is forecast at 0 stems. Add a curve for it, or change the treatment.`;
  return { place, message };
}
