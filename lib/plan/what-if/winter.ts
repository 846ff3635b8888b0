import type { Plan } from "#lib/plan/road/plan";
import { KEPT, winterBeds } from "#lib/plan/winter/beds";
import type { WinterMoney } from "./comparison";

/**
 * What the winter costs as a plan has its beds, by the farm's own rates, in whole cents: every bed that could stay in the ground is either
 * covered or lifted. A bed of which a part is kept counts as kept: the whole of it is covered.
 */
export function winterTotals({ snapshot, seasonYear }: Pick<Plan, "snapshot" | "seasonYear">): WinterMoney {
  const treatmentOf = new Map(snapshot.plantings.map(({ id, treatment }) => [id, treatment]));
  let labourCents = 0;
  let materialCents = 0;
  for (const { plantings, keep, dig } of winterBeds(snapshot, seasonYear)) {
    const isKept = plantings.some(({ kept }) => treatmentOf.get(kept.planting.id) === KEPT);
    const cost = isKept ? keep : dig;
    labourCents += cost.labourCents;
    materialCents += cost.materialCents;
  }
  return { labourCents: Math.round(labourCents), materialCents: Math.round(materialCents) };
}
