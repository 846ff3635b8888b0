import { groupsOf } from "#lib/domain/groups-of";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Variety } from "#lib/domain/records/variety";
import { type PickLine, placeOf } from "./pick-list";
import type { Stand } from "./supply";

/** What is cut of one variety in one place on one day, for all bookings together. `stems` are saleable, `stemsToCut` with what will be graded out; both are sums over the lines. `stand` is the first in the place. */
export type PickRow = {
  readonly stand: Stand;
  readonly variety: Variety;
  readonly crop: Crop;
  readonly stems: number;
  readonly stemsToCut: number;
  /** Of the saleable stems, those that are held longer than they keep as good as fresh. */
  readonly stretchedStems: number;
  /** Saleable stems by booking id. */
  readonly stemsOfBooking: ReadonlyMap<number, number>;
};

/** The lines of a day as rows to walk: one for each place and variety, in the order of the lines. Two plantings of a variety in one bed are one row. */
export function pickRows(lines: readonly PickLine[]): PickRow[] {
  return [...groupsOf(lines, ({ stand }) => placeOf(stand)).values()].flatMap((ofPlace) =>
    [...groupsOf(ofPlace, ({ variety }) => variety.id).values()].map(rowOf),
  );
}

/** What is cut in one place on one day: its rows by crop, in the order of the lines. */
export type PickPlace = { readonly stand: Stand; readonly crops: readonly (readonly PickRow[])[] };

/** The rows of a day place by place: a bed or the cooler, each once, its rows of one crop together. */
export function pickPlaces(lines: readonly PickLine[]): PickPlace[] {
  return [...groupsOf(pickRows(lines), ({ stand }) => placeOf(stand)).values()].map((ofPlace) => ({
    stand: ofPlace[0].stand,
    crops: [...groupsOf(ofPlace, ({ crop }) => crop.id).values()],
  }));
}

/** The bookings of some lines, each once, by the day of the event. */
export const bookingsOfLines = (lines: readonly PickLine[]): Booking[] =>
  [...new Map(lines.map(({ booking }) => [booking.id, booking])).values()].sort(
    (a, b) => a.eventOn.localeCompare(b.eventOn) || a.id - b.id,
  );

const rowOf = (lines: readonly PickLine[]): PickRow => {
  const [{ stand, variety, crop }] = lines;
  const stemsOfBooking = new Map<number, number>();
  for (const { booking, stems } of lines) stemsOfBooking.set(booking.id, (stemsOfBooking.get(booking.id) ?? 0) + stems);
  return {
    stand,
    variety,
    crop,
    stems: lines.reduce((sum, { stems }) => sum + stems, 0),
    stretchedStems: lines.reduce((sum, { stems, isStretched }) => sum + (isStretched ? stems : 0), 0),
    stemsToCut: lines.reduce((sum, { stemsToCut }) => sum + stemsToCut, 0),
    stemsOfBooking,
  };
};
