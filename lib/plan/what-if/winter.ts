import type { Plan } from "#lib/plan/road/plan";
import { winterBeds } from "#lib/plan/winter/beds";
import { keptBedTest } from "#lib/plan/winter/kept-beds";
import type { WinterMoney } from "./comparison";

/**
 * What the winter costs as a plan has its beds, by the farm's own rates, in whole cents: every bed that could stay in the ground is either
 * covered or lifted. A bed of which a part is kept counts as kept: the whole of it is covered.
 */
export function winterTotals({ snapshot, seasonYear }: Pick<Plan, "snapshot" | "seasonYear">): WinterMoney {
  const beds = winterBeds(snapshot, seasonYear);
  const isKept = keptBedTest(snapshot);
  const costs = beds.map((bed) => (isKept(bed) ? bed.keep : bed.dig));
  const sum = (of: (cost: WinterMoney) => number) => costs.reduce((total, cost) => total + of(cost), 0);
  return {
    labourCents: sum(({ labourCents }) => labourCents),
    materialCents: sum(({ materialCents }) => materialCents),
    replacementCents: sum(({ replacementCents }) => replacementCents),
    freeBedCents: sum(({ freeBedCents }) => freeBedCents),
  };
}
