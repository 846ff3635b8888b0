import { addDays, type Day, dayInYear, daysBetween, isoWeekday, sameDayIn, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import { withoutLapsed } from "#lib/plan/road/lapsed";

const SATURDAY = 6;
const CLIENT = "A Saturday still to be booked";

/** Farms with what is expected of them, by season and day: asked for at every tick of a bed, and known again as the same farm. */
const KNOWN = new WeakMap<Snapshot, Map<string, Snapshot>>();

/**
 * The farm as Keep or dig reckons with it: without the bookings that have lapsed [N4], and with those of a season that are still to come [K12]. The farm
 * itself where none has and none is expected. Never written, and in no other plan.
 */
export function withExpectedBookings(snapshot: Snapshot, seasonYear: number, today: Day): Snapshot {
  const known = KNOWN.get(snapshot) ?? new Map<string, Snapshot>();
  KNOWN.set(snapshot, known);
  const key = `${seasonYear} ${today}`;
  const found = known.get(key);
  if (found) return found;
  const stands = withoutLapsed(snapshot, today);
  const expected = expectedBookings(stands, seasonYear);
  const farm = expected.length === 0 ? stands : { ...stands, bookings: [...stands.bookings, ...expected] };
  known.set(key, farm);
  return farm;
}

/**
 * So many free Saturdays of the season as the farm expects to be booked, from the median last frost of spring to the median first of autumn, spread evenly; each asks
 * for what the booking nearest to it in the year asks, of this season or the one before, and counts as an enquiry. Fewer where there are fewer;
 * none where there is no booking to go by.
 */
export function expectedBookings({ bookings, farm }: Snapshot, seasonYear: number): Booking[] {
  const taken = bookings.filter(({ status }) => status !== "cancelled");
  const patterns = taken.filter(({ eventOn }) => [seasonYear, seasonYear - 1].includes(yearOf(eventOn)));
  const free = freeSaturdays(farm.frost, seasonYear, new Set(taken.map(({ eventOn }) => eventOn)));
  const count = patterns.length === 0 ? 0 : Math.min(farm.winter.expectedSaturdayCount, free.length);
  const lastId = bookings.reduce((most, { id }) => Math.max(most, id), 0);
  return Array.from({ length: count }, (_, index) => {
    const eventOn = free[Math.floor(((index + 0.5) * free.length) / count)];
    const pattern = nearest(patterns, eventOn);
    return {
      ...pattern,
      id: lastId + 1 + index,
      client: CLIENT,
      eventOn,
      status: "enquiry",
      lapsesAfter: null,
      note: "",
      promises: [],
    };
  });
}

function freeSaturdays(
  { lastSpringP50, firstAutumnP50 }: Snapshot["farm"]["frost"],
  seasonYear: number,
  taken: ReadonlySet<Day>,
): Day[] {
  const first = dayInYear(lastSpringP50, seasonYear);
  const dayCount = daysBetween(first, dayInYear(firstAutumnP50, seasonYear)) + 1;
  return Array.from({ length: Math.max(0, dayCount) }, (_, index) => addDays(first, index)).filter(
    (day) => isoWeekday(day) === SATURDAY && !taken.has(day),
  );
}

/** The booking whose day lies nearest in the year; of two as near the one taken first. */
function nearest(bookings: readonly Booking[], day: Day): Booking {
  const away = ({ eventOn }: Booking) => Math.abs(daysBetween(sameDayIn(eventOn, yearOf(day)), day));
  return bookings.reduce((best, booking) =>
    away(booking) < away(best) || (away(booking) === away(best) && booking.id < best.id) ? booking : best,
  );
}
