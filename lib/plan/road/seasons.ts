import { cropAs } from "#lib/domain/crop-of-variety";
import { toDayNumber, yearOf } from "#lib/domain/day";
import { eventDaysOf, type OwnEventDays } from "#lib/domain/event-days";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Farm } from "#lib/domain/records/farm-settings";
import { ById, type Snapshot } from "#lib/domain/snapshot";
import { weeksOfBloom } from "./bloom-end";
import { warmthOf } from "./first-cut";
import { curveFinder, type Grown, grownBy, withReplanted } from "./grown";
import { holdOf, lastEventDay } from "./hold-window";
import { openDayOf } from "./purchases";
import type { Stand } from "./supply";
import { firstDayOf } from "./usual-year";

/** The season that a booking belongs to: the year of its event. */
export const seasonOfBooking = ({ eventOn }: Pick<Booking, "eventOn">): number => yearOf(eventOn);

/** The season that stems belong to: that of their planting, or for the cooler the year they were cut in. */
export const seasonOfStems = (stand: Stand): number =>
  stand.kind === "planting" ? stand.planting.planting.seasonYear : yearOf(stand.stock.cutOn);

/** The bookings of a season that ask for anything, in the order of the match. */
export const bookingsOf = (
  { needs }: { readonly needs: readonly { readonly booking: Booking }[] },
  seasonYear: number,
): Booking[] => [
  ...new Set(needs.map(({ booking }) => booking).filter((booking) => seasonOfBooking(booking) === seasonYear)),
];

/** Days on which stems of a season may be cut, and the crop that says how long they keep. Day numbers. */
type Stretch = { readonly season: number; readonly crop: Crop; readonly firstCut: number; readonly lastCut: number };

/**
 * The seasons that one match must see together to plan this one: those whose stems could be in the hold window of each other's bookings, directly
 * or through another, ascending. New Year is no wall: a stem cut on 30 December may serve 2 January, but only once [M8]. Reckoned from dates
 * alone, generously; a farm whose other seasons lie apart plans this one alone.
 * @param strayDays  by how many days the first cut of a planting may come early or late; none in a plan
 * @param bookings   instead of the farm's: when its stems may be cut is then not worked out again
 */
export function meetingSeasons(
  snapshot: Snapshot,
  seasonYear: number,
  strayDays: (row: Grown) => number = NEVER_STRAY,
  bookings: readonly Asking[] = snapshot.bookings,
): number[] {
  const eventDays = eventDaysBySeason(snapshot.farm, bookings);
  const isAlone = [...eventDays.keys()].every((season) => season === seasonYear) && hasOnly(snapshot, seasonYear);
  if (isAlone) return [seasonYear];
  const meets = new Map<number, Set<number>>();
  const join = (a: number, b: number) => meets.set(a, (meets.get(a) ?? new Set()).add(b));
  const { farm } = snapshot;
  for (const { season, crop, firstCut, lastCut } of stretchesOf(snapshot, strayDays))
    for (const [other, days] of eventDays) {
      if (other === season || meets.get(season)?.has(other)) continue;
      const last = lastEventDay(lastCut, holdOf(crop, farm));
      if (!days.some(({ day, leadDays }) => day >= firstCut + leadDays && day <= last)) continue;
      join(season, other);
      join(other, season);
    }
  const found = new Set([seasonYear]);
  for (const season of found) for (const other of meets.get(season) ?? []) found.add(other);
  return [...found].sort((a, b) => a - b);
}

/** What of a booking says which seasons meet. */
type Asking = Pick<Booking, "eventOn" | "status"> & OwnEventDays;

const NEVER_STRAY = () => 0;

/** The stretches of a farm whose plantings bloom when they should. */
const known = new WeakMap<Snapshot, readonly Stretch[]>();

function stretchesOf(snapshot: Snapshot, strayDays: (row: Grown) => number): Iterable<Stretch> {
  if (strayDays !== NEVER_STRAY) return stretches(snapshot, strayDays);
  const found = known.get(snapshot) ?? [...stretches(snapshot, strayDays)];
  known.set(snapshot, found);
  return found;
}

/** An event, and how many days before it the last stem for it may be cut, what is worn included. */
type EventAhead = { readonly day: number; readonly leadDays: number };

function eventDaysBySeason(farm: Farm, bookings: readonly Asking[]): Map<number, EventAhead[]> {
  const days = new Map<number, EventAhead[]>();
  for (const booking of bookings) {
    if (booking.status === "cancelled") continue;
    const event = { day: toDayNumber(booking.eventOn), leadDays: eventDaysOf(farm, booking).wornLeadDays };
    const known = days.get(seasonOfBooking(booking));
    if (known) known.push(event);
    else days.set(seasonOfBooking(booking), [event]);
  }
  return days;
}

const hasOnly = ({ plantings, coolerStock, purchases }: Snapshot, seasonYear: number): boolean =>
  plantings.every((planting) => planting.seasonYear === seasonYear) &&
  coolerStock.every(({ cutOn }) => yearOf(cutOn) === seasonYear) &&
  purchases.every((purchase) => yearOf(openDayOf(purchase)) === seasonYear);

/** When the stems of each planting may be cut, from its first bloom to the last one that waits out its field days, and of each cooler lot and purchase. */
function* stretches(snapshot: Snapshot, strayDays: (row: Grown) => number): Generator<Stretch> {
  const beds = new ById("bed", snapshot.beds);
  const varieties = new ById("variety", snapshot.varieties);
  const crops = new ById("crop", snapshot.crops);
  const curveFor = curveFinder(snapshot.curves);
  const warmth = warmthOf(snapshot.farm, snapshot.weather);
  for (const planting of snapshot.plantings) {
    const variety = varieties.get(planting.varietyId);
    const crop = cropAs(variety, crops.get(variety.cropId));
    const of = { planting, bed: beds.get(planting.bedId), variety, crop };
    const row = grownBy(of, curveFor, warmth, snapshot.shown);
    for (const one of withReplanted([row])) yield* stretchOf(one, strayDays);
  }
  const bought = snapshot.purchases.map((row) => ({ varietyId: row.varietyId, cutOn: openDayOf(row) }));
  for (const { varietyId, cutOn } of [...snapshot.coolerStock, ...bought]) {
    const day = toDayNumber(cutOn);
    const variety = varieties.get(varietyId);
    const crop = cropAs(variety, crops.get(variety.cropId));
    yield { season: yearOf(cutOn), crop, firstCut: day, lastCut: day };
  }
}

function* stretchOf(row: Grown, strayDays: (row: Grown) => number): Generator<Stretch> {
  const { planting, crop, curve, firstCut } = row;
  if (!curve || firstCut === null) return;
  const stray = strayDays(row);
  const bounds = {
    opensFrom: firstCut,
    frostDay: Number.POSITIVE_INFINITY,
    yearEnd: firstDayOf(planting.seasonYear + 1),
  };
  const bloomDays = weeksOfBloom(curve, crop, bounds).length * 7;
  const lastCut = firstCut + bloomDays - 1 + Math.floor(crop.fieldDays.count);
  yield { season: planting.seasonYear, crop, firstCut: firstCut - stray, lastCut: lastCut + stray };
}
