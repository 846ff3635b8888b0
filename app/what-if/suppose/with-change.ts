import type { Change } from "#lib/domain/what-if";

/**
 * The changes with one more at their end. What it stands in place of is taken out: of two frosts, two futures of one bed or two days of
 * one booking only the last would count. Shifts and yields stay, since they add up.
 */
export function withChange(changes: readonly Change[], change: Change): readonly Change[] {
  const matter = matterOf(change);
  return [...changes.filter((earlier) => matter === null || matterOf(earlier) !== matter), change];
}

/** What a change decides outright; null when several such changes may stand beside each other. */
function matterOf(change: Change): string | null {
  switch (change.kind) {
    case "bed-kept":
    case "bed-dug":
      return `bed ${change.bedId}`;
    case "frost-moved":
      return "frost";
    case "booking-moved":
      return `day of booking ${change.bookingId}`;
    case "status-set":
      return `status of booking ${change.bookingId}`;
    case "booking-dropped":
      return `booking ${change.bookingId}`;
    case "planting-removed":
      return `planting ${change.plantingId}`;
    case "at-hand-set":
      return `${change.resource} at hand`;
    case "season-shifted":
    case "yield-scaled":
    case "booking-added":
    case "planting-added":
    case "planting-moved":
      return null;
  }
}
