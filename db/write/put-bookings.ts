import { asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { booking, bookingPiece, bookingPromise, bookingStemLine, bookingUnacceptableCrop } from "#db/schema/bookings";
import { inFull } from "#lib/domain/day";
import type { BookingDraft } from "#lib/domain/records/booking";
import type { PromisedStems } from "#lib/domain/records/promised-stems";
import { putLines } from "./put-lines";
import { addRow, changeRow } from "./put-row";
import { refuseTwice } from "./refusal";

/** Writes of one booking inside a change that is open. */

/** Adds a booking with all its lines and gives its id. Refuses a second one of the same client and day. */
export function insertBooking(database: FarmDatabase, draft: BookingDraft): number {
  const id = refuseTwice("client", twice(draft), () => addRow(database, booking, draft));
  putBookingLines(database, id, draft, () => []);
  return id;
}

/** Makes the booking with this id what `draft` says, lines and all. */
export function replaceBooking(database: FarmDatabase, id: number, draft: BookingDraft): void {
  refuseTwice("client", twice(draft), () => changeRow(database, booking, id, draft));
  putBookingLines(database, id, draft, (table) => idsOf(database, table, id));
}

/** Makes what the booking with this id is promised these lines. */
export const replacePromises = (database: FarmDatabase, bookingId: number, promises: readonly PromisedStems[]): void =>
  putLines(
    database,
    bookingPromise,
    idsOf(database, bookingPromise, bookingId),
    promises.map((line, position) => ({ ...line, bookingId, position })),
  );

const twice = ({ client, eventOn }: BookingDraft): string =>
  `a booking of ${client} for ${inFull(eventOn)} is there already: change that one, or write another name`;

type LineTable = typeof bookingPiece | typeof bookingStemLine | typeof bookingPromise | typeof bookingUnacceptableCrop;

const idsOf = (database: FarmDatabase, table: LineTable, bookingId: number): number[] =>
  database
    .select({ id: table.id })
    .from(table)
    .where(eq(table.bookingId, bookingId))
    .orderBy(asc(table.position))
    .all()
    .map(({ id }) => id);

function putBookingLines(
  database: FarmDatabase,
  bookingId: number,
  { pieces, stemLines, promises, unacceptableCropIds }: BookingDraft,
  idsIn: (table: LineTable) => number[],
): void {
  const placed = <Line extends object>(line: Line, position: number) => ({ ...line, bookingId, position });
  putLines(database, bookingPiece, idsIn(bookingPiece), pieces.map(placed));
  putLines(database, bookingStemLine, idsIn(bookingStemLine), stemLines.map(placed));
  putLines(database, bookingPromise, idsIn(bookingPromise), promises.map(placed));
  const crops = unacceptableCropIds.map((cropId, position) => placed({ cropId }, position));
  putLines(database, bookingUnacceptableCrop, idsIn(bookingUnacceptableCrop), crops);
}
