import { stemsAskedFor } from "#lib/domain/booking-stems";
import { withWeekday } from "#lib/domain/day";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import type { ExpectedBooking } from "#lib/plan/road/claim";
import { countOf, forCount, inPercent } from "./numbers";

/** What Keep or dig reckons with beside the bookings there are [K12]; null where nothing is expected. */
export function expectedInWords({ farm }: Snapshot, expected: readonly ExpectedBooking[]): string | null {
  const count = expected.length;
  if (count === 0) return null;
  const { expectedFrom, expectedWeightShare } = farm.winter;
  const which =
    expectedFrom === "last season"
      ? `${countOf(count, "booking")} that last season had and this one has not yet, each in its week`
      : `${countOf(count, "free Saturday")} still to be booked, each like the booking nearest to it in the year`;
  return `${which}; ${forCount(count, "it is", "they are")} weighed at ${inPercent(expectedWeightShare)}.`;
}

/** "Sat 5 Jun, 240 stems, like Swale House" */
export function expectedLine({ bookings, recipes }: Snapshot, expected: ExpectedBooking): string {
  const recipeOf = new ById("recipe", recipes);
  const stems = Math.ceil(stemsAskedFor(expected, (id) => recipeOf.get(id).lines));
  const like = bookings.find(({ id }) => id === expected.likeBookingId);
  return `${withWeekday(expected.eventOn)}, ${countOf(stems, "stem")}${like ? `, like ${like.client}` : ""}`;
}
