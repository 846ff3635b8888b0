import type { Bed } from "#lib/domain/records/bed";
import type { Gap } from "#lib/plan/road/gaps";
import type { Plan } from "#lib/plan/road/plan";
import { KEPT } from "#lib/plan/winter/beds";

/** The kept beds of a plan that serve the need of a gap, most stems first, and what the plan still leaves short. */
export function bedsThatFill({ needIndex }: Gap, { match }: Plan): { beds: readonly Bed[]; leftStems: number } {
  const stemsOf = new Map<Bed, number>();
  for (const { needIndex: served, stand, stems } of match.servings) {
    if (served !== needIndex || stand.kind !== "planting" || stand.planting.planting.treatment !== KEPT) continue;
    const { bed } = stand.planting;
    stemsOf.set(bed, (stemsOf.get(bed) ?? 0) + stems);
  }
  const beds = [...stemsOf].sort(([, a], [, b]) => b - a).map(([bed]) => bed);
  return { beds, leftStems: match.shortStems[needIndex] };
}
