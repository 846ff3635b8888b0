import { type Day, type IsoWeek, isoWeekOf, mondayNumber, toDay } from "#lib/domain/day";
import { groupsOf } from "#lib/domain/groups-of";
import type { Farm } from "#lib/domain/records/farm-settings";
import { ROLES, type Role } from "#lib/domain/words";
import type { Gap } from "./gaps";
import type { Match } from "./match";
import { measuredDays, reachByRole } from "./reach";
import { seasonOfBooking, seasonOfStems } from "./seasons";
import type { Lot } from "./supply";

/** One role in one week: what is asked, what the match covers, and all that could be cut for the week's events, whoever takes it. */
export type WeekRole = {
  readonly role: Role;
  readonly needStems: number;
  readonly coveredStems: number;
  readonly shortStems: number;
  readonly reachableStems: number;
};

/** An ISO week of the season; `bookingIds` have their event in it. */
export type Week = {
  readonly week: IsoWeek;
  readonly monday: Day;
  readonly bookingIds: readonly number[];
  readonly roles: readonly WeekRole[];
  readonly gapIndexes: readonly number[];
};

/**
 * The season week by week, from the first with anything to cut or to serve to the last, none left out [G2].
 * Reachable stems of a role are those of every variety that can take it, cut in the hold window of an event of the week; each counted once.
 */
export function weeks(farm: Farm, match: Match, gaps: readonly Gap[], seasonYear: number): Week[] {
  const ownNeeds = [...match.needs.keys()].filter(
    (index) => seasonOfBooking(match.needs[index].booking) === seasonYear,
  );
  const needIndexes = groupsOf(ownNeeds, (index) => mondayNumber(match.needs[index].eventDay));
  const gapIndexes = groupsOf(gaps.keys(), (index) => mondayNumber(gaps[index].need.eventDay));
  const mondays = [...needIndexes.keys()];
  for (const { days, lots } of match.supplies) {
    const isOwn = (ofDay: readonly Lot[]) => ofDay.some(({ stand }) => seasonOfStems(stand) === seasonYear);
    const first = lots.findIndex(isOwn);
    if (first >= 0) mondays.push(mondayNumber(days[first]), mondayNumber(days[lots.findLastIndex(isOwn)]));
  }
  if (mondays.length === 0) return [];
  const out: Week[] = [];
  const last = mondays.reduce((a, b) => Math.max(a, b));
  for (let monday = mondays.reduce((a, b) => Math.min(a, b)); monday <= last; monday += 7) {
    const here = needIndexes.get(monday) ?? [];
    const ofWeek = here.map((index) => match.needs[index]);
    const reachable = reachByRole(match.supplies, measuredDays(farm, monday, ofWeek));
    out.push({
      week: isoWeekOf(toDay(monday)),
      monday: toDay(monday),
      bookingIds: [...new Set(here.map((index) => match.needs[index].booking.id))],
      gapIndexes: gapIndexes.get(monday) ?? [],
      roles: ROLES.map((role, roleIndex) => {
        const ofRole = here.filter((index) => match.needs[index].role === role);
        const needStems = ofRole.reduce((sum, index) => sum + match.needs[index].stems, 0);
        const shortStems = ofRole.reduce((sum, index) => sum + match.shortStems[index], 0);
        return {
          role,
          needStems,
          coveredStems: needStems - shortStems,
          shortStems,
          reachableStems: reachable[roleIndex],
        };
      }),
    });
  }
  return out;
}
