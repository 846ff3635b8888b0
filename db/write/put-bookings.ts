import { asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { booking, bookingPiece, bookingStemLine, bookingUnacceptableCrop } from "#db/schema/bookings";
import type { BookingDraft } from "#lib/domain/booking";
import { inFull } from "#lib/domain/day";
import { addRow } from "./add-row";
import { putLines } from "./put-lines";
import { refuseTwice } from "./refusal";
import { bookingColumns, pieceColumns, stemLineColumns } from "./to-columns";

/** Writes of one booking inside a change that is open. */

/** Adds a booking with all its lines and gives its id. Refuses a second one of the same client and day. */
export function insertBooking(database: FarmDatabase, draft: BookingDraft): number {
  const id = refuseTwice("client", twice(draft), () => addRow(database, booking, bookingColumns(draft)));
  putPieces(database, id, [], draft.pieces);
  putStemLines(database, id, [], draft.stemLines);
  putUnacceptableCrops(database, id, [], draft.unacceptableCropIds);
  return id;
}

/** Makes the booking with this id what `draft` says, lines and all. */
export function replaceBooking(database: FarmDatabase, id: number, draft: BookingDraft): void {
  refuseTwice("client", twice(draft), () =>
    database.update(booking).set(bookingColumns(draft)).where(eq(booking.id, id)).run(),
  );
  putPieces(database, id, idsOf(database, bookingPiece, id), draft.pieces);
  putStemLines(database, id, idsOf(database, bookingStemLine, id), draft.stemLines);
  putUnacceptableCrops(database, id, idsOf(database, bookingUnacceptableCrop, id), draft.unacceptableCropIds);
}

const twice = ({ client, eventOn }: BookingDraft): string =>
  `a booking of ${client} for ${inFull(eventOn)} is there already: change that one, or write another name`;

type LineTable = typeof bookingPiece | typeof bookingStemLine | typeof bookingUnacceptableCrop;

const idsOf = (database: FarmDatabase, table: LineTable, bookingId: number): number[] =>
  database
    .select({ id: table.id })
    .from(table)
    .where(eq(table.bookingId, bookingId))
    .orderBy(asc(table.position))
    .all()
    .map(({ id }) => id);

function putPieces(database: FarmDatabase, bookingId: number, ids: number[], pieces: BookingDraft["pieces"]): void {
  putLines(ids, pieces, {
    change: (id, piece, position) =>
      database
        .update(bookingPiece)
        .set({ ...pieceColumns(piece), position })
        .where(eq(bookingPiece.id, id))
        .run(),
    add: (piece, position) => addRow(database, bookingPiece, { ...pieceColumns(piece), bookingId, position }),
    remove: (id) => database.delete(bookingPiece).where(eq(bookingPiece.id, id)).run(),
  });
}

function putStemLines(
  database: FarmDatabase,
  bookingId: number,
  ids: number[],
  lines: BookingDraft["stemLines"],
): void {
  putLines(ids, lines, {
    change: (id, line, position) =>
      database
        .update(bookingStemLine)
        .set({ ...stemLineColumns(line), position })
        .where(eq(bookingStemLine.id, id))
        .run(),
    add: (line, position) => addRow(database, bookingStemLine, { ...stemLineColumns(line), bookingId, position }),
    remove: (id) => database.delete(bookingStemLine).where(eq(bookingStemLine.id, id)).run(),
  });
}

function putUnacceptableCrops(
  database: FarmDatabase,
  bookingId: number,
  ids: number[],
  cropIds: readonly number[],
): void {
  putLines(ids, cropIds, {
    change: (id, cropId, position) =>
      database
        .update(bookingUnacceptableCrop)
        .set({ cropId, position })
        .where(eq(bookingUnacceptableCrop.id, id))
        .run(),
    add: (cropId, position) => addRow(database, bookingUnacceptableCrop, { cropId, bookingId, position }),
    remove: (id) => database.delete(bookingUnacceptableCrop).where(eq(bookingUnacceptableCrop.id, id)).run(),
  });
}
