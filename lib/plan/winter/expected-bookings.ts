import { addDays, type Day, dayInYear, daysBetween, isoWeekday, sameDayIn, yearOf } from "#lib/domain/day";
import type { Booking } from "#lib/domain/records/booking";
import type { Snapshot } from "#lib/domain/snapshot";
import type { ExpectedBooking } from "#lib/plan/road/claim";
import { asksForStems, withoutLapsed } from "#lib/plan/road/lapsed";
import { notYetAgain } from "./not-yet-again";

const SATURDAY = 6;
const CLIENT = "Still to be booked";

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
  const expected = expectedBookings(snapshot, seasonYear, today);
  const farm = expected.length === 0 ? stands : { ...stands, bookings: [...stands.bookings, ...expected] };
  known.set(key, farm);
  return farm;
}

/**
 * The bookings of a season that the farm expects from a day on [K12], by day: so many free Saturdays, or what last season had and this one has not yet. None
 * where there is no booking to go by.
 */
export function expectedBookings(snapshot: Snapshot, seasonYear: number, today: Day): ExpectedBooking[] {
  const { bookings, farm } = snapshot;
  const asking = bookings.filter((booking) => asksForStems(booking, today));
  const expected =
    farm.winter.expectedFrom === "last season"
      ? notYetAgain(bookings, asking, seasonYear)
      : onFreeSaturdays(snapshot, asking, seasonYear, today);
  const lastId = bookings.reduce((most, { id }) => Math.max(most, id), 0);
  return expected
    .filter(({ eventOn }) => eventOn >= today)
    .map(({ like, eventOn }, index) => ({
      ...like,
      id: lastId + 1 + index,
      likeBookingId: like.id,
      client: CLIENT,
      eventOn,
      status: "enquiry",
      lapsesAfter: null,
      note: "",
      promises: [],
      takenOn: today,
    }));
}

/**
 * So many free Saturdays as the farm says, from the median last frost of spring to the median first of autumn, spread evenly; each asks for what the booking
 * nearest to it in the year asks, of this season or the one before. Fewer where there are fewer.
 */
function onFreeSaturdays({ farm }: Snapshot, asking: readonly Booking[], seasonYear: number, today: Day) {
  const patterns = asking.filter(({ eventOn }) => [seasonYear, seasonYear - 1].includes(yearOf(eventOn)));
  const free = freeSaturdays(farm.frost, seasonYear, new Set(asking.map(({ eventOn }) => eventOn)));
  const ahead = free.filter((day) => day >= today);
  const count = patterns.length === 0 ? 0 : Math.min(farm.winter.expectedSaturdayCount, ahead.length);
  return Array.from({ length: count }, (_, index) => {
    const eventOn = ahead[Math.floor(((index + 0.5) * ahead.length) / count)];
    return { like: nearest(patterns, eventOn), eventOn };
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
