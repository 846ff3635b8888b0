import type { Snapshot } from "#lib/domain/snapshot";
import { bed, booking, crop, curve, day, planting, snapshot } from "../../small-farm";

/**
 * Two dahlia beds of 70 plants and nothing left to chance: kept they bloom in the week of 7 June, of which 30 stems each are in reach of 12 June,
 * dug in that of 6 September. One booking on 12 June asks for these stems.
 */
export const juneFarm = (stemLines: Snapshot["bookings"][number]["stemLines"]): Snapshot =>
  snapshot({
    crops: [crop({ id: 1, overwinters: true })],
    curves: [
      curve({ id: 1, treatment: "kept-in-ground", firstCutSpreadDays: 0, yieldSpread: 0 }),
      curve({
        id: 2,
        treatment: "spring-planted",
        anchor: { kind: "days-after-planting", days: 109 },
        firstCutSpreadDays: 0,
        yieldSpread: 0,
      }),
    ],
    beds: [bed({ id: 1 }), bed({ id: 2 })],
    plantings: [1, 2].map((id) => planting({ id, bedId: id, treatment: "spring-planted", winterSurvivalShare: 1 })),
    bookings: [booking({ id: 1, eventOn: day("2027-06-12"), stemLines })],
  });
