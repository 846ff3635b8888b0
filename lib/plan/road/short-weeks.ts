import type { Day, IsoWeek } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "./plan";
import { isAhead } from "./to-come";

/** A week in which a role is short, and how many bookings that touches. */
export type ShortWeek = {
  readonly week: IsoWeek;
  readonly monday: Day;
  readonly role: Role;
  readonly shortStems: number;
  readonly bookingCount: number;
};

/** Every week and role with an event still to come that is short: focal first, as a grower asks, then by week. */
export function shortWeeks(plan: Plan): ShortWeek[] {
  const { weeks, gaps } = plan;
  return ROLES.flatMap((role) =>
    weeks.flatMap(({ week, monday, gapIndexes }) => {
      const ofRole = gapIndexes
        .map((index) => gaps[index])
        .filter(({ need }) => need.role === role && isAhead(plan, need.eventDay));
      if (ofRole.length === 0) return [];
      const shortStems = ofRole.reduce((sum, gap) => sum + gap.shortStems, 0);
      return [{ week, monday, role, shortStems, bookingCount: new Set(ofRole.map((gap) => gap.need.booking.id)).size }];
    }),
  );
}
