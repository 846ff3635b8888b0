import type { Booking } from "#lib/domain/records/booking";
import type { Match } from "./match";
import type { Need } from "./needs";
import type { Plan } from "./plan";
import { brokenOf } from "./promises";
import { seasonOfBooking } from "./seasons";
import { isAhead } from "./to-come";

/** A need that is short of other stems than it was. Broken are those short that were promised [M9]. */
export type MovedNeed = {
  readonly need: Need;
  readonly shortBefore: number;
  readonly shortNow: number;
  readonly brokenBefore: number;
  readonly brokenNow: number;
};

/** A booking whose stems moved, need by need. */
export type MovedBooking = { readonly booking: Booking; readonly needs: readonly MovedNeed[] };

/**
 * Whose stems moved between two plans of a season: every booking still to come with a need that asks in both for the same stems and is short of another
 * number of them [T8]. Who loses most comes first. What a booking asks anew, or for another number of stems, is the grower's own change and is left out.
 */
export function movedBookings(before: Plan, now: Plan): MovedBooking[] {
  const knownBefore = needsByKey(before.match);
  const byBooking = new Map<Booking, MovedNeed[]>();
  for (const [key, { need, short }] of needsByKey(now.match)) {
    const was = knownBefore.get(key);
    const isOwn = seasonOfBooking(need.booking) === now.seasonYear && isAhead(now, need.eventDay);
    if (!was || !isOwn || was.need.stems !== need.stems || was.short === short) continue;
    const moved = {
      need,
      shortBefore: was.short,
      shortNow: short,
      brokenBefore: brokenOf(was.need, was.short),
      brokenNow: brokenOf(need, short),
    };
    byBooking.set(need.booking, [...(byBooking.get(need.booking) ?? []), moved]);
  }
  return [...byBooking]
    .map(([booking, needs]) => ({ booking, needs }))
    .sort((a, b) => lostStems(b) - lostStems(a) || a.needs[0].need.eventDay - b.needs[0].need.eventDay);
}

/** Stems that a booking has fewer than before; below 0 where it has more. */
export const lostStems = ({ needs }: MovedBooking): number =>
  needs.reduce((sum, { shortBefore, shortNow }) => sum + shortNow - shortBefore, 0);

/** A match's needs under what tells them apart: their booking, and what they ask for. */
const needsByKey = ({ needs, shortStems }: Match) =>
  new Map(needs.map((need, index) => [`${need.booking.id} ${need.kind}`, { need, short: shortStems[index] }]));
