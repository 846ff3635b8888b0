import type { Day, IsoWeek } from "#lib/domain/day";
import { ROLES, type Role } from "#lib/domain/words";
import type { Plan } from "./plan";

/** A week in which a role is short, and how many bookings that touches. */
export type ShortWeek = {
  readonly week: IsoWeek;
  readonly monday: Day;
  readonly role: Role;
  readonly shortStems: number;
  readonly bookingCount: number;
};

/** Every short week and role: focal first, as a grower asks, then by week. */
export function shortWeeks({ weeks, gaps }: Plan): ShortWeek[] {
  return ROLES.flatMap((role) =>
    weeks.flatMap(({ week, monday, gapIndexes }) => {
      const ofRole = gapIndexes.map((index) => gaps[index]).filter((gap) => gap.need.role === role);
      if (ofRole.length === 0) return [];
      const shortStems = ofRole.reduce((sum, gap) => sum + gap.shortStems, 0);
      return [{ week, monday, role, shortStems, bookingCount: new Set(ofRole.map((gap) => gap.need.booking.id)).size }];
    }),
  );
}
