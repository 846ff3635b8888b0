import { addDays, type Day, daysBetween, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import { asksForStems, isCutFor } from "#lib/plan/road/lapsed";

/** A booking that is expected on a day, like one that there was. */
export type Expected = { readonly like: Booking; readonly eventOn: Day };

/**
 * What was booked in the season before and has no counterpart in this one yet, by day [K12]. A booking was booked if it was confirmed or held on the day of its
 * event; it is expected again in its week and on its weekday. Whoever asks this season is the counterpart of one of them: pairs are made one after the other, always
 * of the two whose days lie nearest.
 * @param asking  those that ask for anything now
 */
export function notYetAgain(bookings: readonly Booking[], asking: readonly Booking[], seasonYear: number): Expected[] {
  const before = bookings.filter(
    (booking) =>
      yearOf(booking.eventOn) === seasonYear - 1 && isCutFor(booking) && asksForStems(booking, booking.eventOn),
  );
  const now = asking.filter(({ eventOn }) => yearOf(eventOn) === seasonYear);
  const again = before.map((like) => ({ like, eventOn: aYearOn(like.eventOn) }));
  const pairs = again.flatMap((expected) =>
    now.map((booking) => ({ expected, booking, days: Math.abs(daysBetween(expected.eventOn, booking.eventOn)) })),
  );
  pairs.sort(
    (a, b) =>
      a.days - b.days ||
      daysBetween(b.expected.eventOn, a.expected.eventOn) ||
      a.expected.like.id - b.expected.like.id ||
      daysBetween(b.booking.eventOn, a.booking.eventOn) ||
      a.booking.id - b.booking.id,
  );
  const paired = new Set<Expected | Booking>();
  for (const { expected, booking } of pairs) {
    if (paired.has(expected) || paired.has(booking)) continue;
    paired.add(expected).add(booking);
  }
  return again
    .filter((expected) => !paired.has(expected))
    .sort((a, b) => daysBetween(b.eventOn, a.eventOn) || a.like.id - b.like.id);
}

/** The same weekday 52 weeks later, or 53 where the 52nd is still in the same year. */
function aYearOn(day: Day): Day {
  const later = addDays(day, 52 * 7);
  return yearOf(later) === yearOf(day) ? addDays(later, 7) : later;
}
