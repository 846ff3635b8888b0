import type { BookingRecord, PieceRecord, PromiseRecord, StemLineRecord } from "#lib/domain/farm-records";
import { nameKey } from "#lib/domain/nearest-name";
import { BOOKING_SHEET } from "#lib/domain/records/booking";
import { oddEventDays } from "#lib/domain/records/event-days";
import type { Farm } from "#lib/domain/records/farm-settings";
import { type Fields, headingOf, type RecordOf } from "#lib/domain/records/field";
import { PIECE_SHEET } from "#lib/domain/records/piece";
import { PROMISE_SHEET } from "#lib/domain/records/promised-stems";
import { STEM_SHEET } from "#lib/domain/records/stem-line";
import { halfPieceInWords } from "#lib/plan/words/half-pieces";
import { BookingOwners } from "./booking-owners";
import { gatherBookings } from "./gather-bookings";
import { KEY_HEADING, type KeptRow, type KeptRows } from "./known-farm";
import { matchRows } from "./match-rows";
import type { NameBook } from "./name-book";
import { type Place, placeInWords } from "./sheet-problem";
import { linkRows, mapRecords, type Say, type SheetRows } from "./sheet-rows";
import type { RowOf } from "./to-records";

export type BookingSheets = {
  readonly bookings: SheetRows<RowOf<"bookings">>;
  readonly pieces: SheetRows<RowOf<"pieces">>;
  readonly stems: SheetRows<RowOf<"stems">>;
  readonly promises: SheetRows<RowOf<"promises">>;
};

/**
 * `records` are the bookings that the clean rows make new or other than they are, whole; the rows tell which line of which sheet is clean, each
 * with the row of the farm that it stands for, under the names that things have after the upload.
 */
export type LinkedBookings = {
  readonly records: readonly BookingRecord[];
  readonly bookings: SheetRows<BookingRecord>;
  readonly pieces: SheetRows<LineOf<PieceRecord>>;
  readonly stems: SheetRows<LineOf<StemLineRecord>>;
  readonly promises: SheetRows<LineOf<PromiseRecord>>;
};

/** A line under the client and day of its booking. */
type LineOf<Line> = Line & Pick<BookingRecord, "client" | "eventOn">;

type Names = {
  readonly crops: NameBook;
  readonly recipes: NameBook;
  /** What a recipe is counted in after the upload. */
  readonly unitOf: (recipe: string) => string;
  readonly farm: Farm;
  readonly rows: KeptRows;
};

/**
 * Bookings with the pieces, stems and promises of the same upload, and lines for bookings of the farm. A booking is known by client and day, and stands
 * once. Lines that the upload lacks stay. One with a wrong line is left out whole, since half a promise is worse than none; its rows say so.
 */
export function linkBookings(sheets: BookingSheets, names: Names): LinkedBookings {
  const { crops, recipes, unitOf, farm, rows: kept } = names;
  const bookings = linkBookingRows(sheets.bookings, crops, farm, kept.bookings);
  const owners = new BookingOwners(bookings.rows, kept.bookings);
  const matched = <F extends Fields>(
    fields: F,
    rows: SheetRows<RecordOf<F>>,
    keptRows: readonly KeptRow<RecordOf<F>>[],
    inNames: (row: RecordOf<F>) => RecordOf<F>,
    restOf: (row: RecordOf<F>) => unknown,
  ) =>
    matchRows(fields, mapRecords(rows, inNames), {
      kept: keptRows.map((one) => ({ ...one, row: inNames(one.row) })),
      identityOf: (row) => JSON.stringify([owners.idOf(row as LineOf<object>), restOf(row)]),
      held: "several",
    });
  const pieceRows = matched(
    PIECE_SHEET,
    sheets.pieces,
    kept.pieces,
    (row) => owners.renamed({ ...row, recipe: recipes.named(row.recipe) }),
    ({ recipe }) => nameKey(recipe),
  );
  const ofCrop = <Row extends LineOf<{ readonly crop: string | null }>>(row: Row): Row =>
    owners.renamed({ ...row, crop: row.crop === null ? null : crops.named(row.crop) });
  const roleAndCrop = ({ role, crop }: { readonly role: string; readonly crop: string | null }) => [
    role,
    crop === null ? null : nameKey(crop),
  ];
  const stemRows = matched(STEM_SHEET, sheets.stems, kept.stems, ofCrop, roleAndCrop);
  const promiseRows = matched(PROMISE_SHEET, sheets.promises, kept.promises, ofCrop, roleAndCrop);
  const checkOwner = (line: LineOf<object>, lineKept: KeptRow | null, say: Say) => {
    owners.check(line, say);
    const owner = owners.find(line);
    if (owner && lineKept && owner.farmId !== lineKept.id)
      say(
        KEY_HEADING,
        `this key is of a line of another booking: change the client and day back, or empty the key to add the line to "${line.client}"`,
      );
  };
  const pieces = linkRows(pieceRows, (line, say, row) => {
    checkOwner(line, row.kept, say);
    const recipe = recipes.find(line.recipe);
    if (!recipe.ok) say("recipe", recipe.message);
    if (!recipe.ok) return null;
    const half = halfPieceInWords(line.pieceCount, { name: recipe.name, unit: unitOf(recipe.name) });
    // What the farm has had all along may stay.
    if (half !== null && (row.kept?.row as PieceRecord | undefined)?.pieceCount !== line.pieceCount) say("count", half);
    return { ...line, recipe: recipe.name };
  });
  const ofCropLine = <Line extends LineOf<{ readonly crop: string | null }>>(
    line: Line,
    say: Say,
    row: { readonly kept: KeptRow | null },
  ): Line => {
    checkOwner(line, row.kept, say);
    return { ...line, crop: line.crop === null ? null : cropName(line.crop, "crop", crops, say) };
  };
  const stems = linkRows(stemRows, ofCropLine);
  const promises = linkRows(promiseRows, ofCropLine);
  const whole = withoutHalves({ bookings, pieces, stems, promises }, owners);
  return { ...whole, records: gatherBookings(whole, owners, names) };
}

function linkBookingRows(
  sheet: SheetRows<RowOf<"bookings">>,
  crops: NameBook,
  farm: Farm,
  kept: KeptRows["bookings"],
): SheetRows<BookingRecord> {
  const idsOnFarm = new Map(kept.map(({ id, row }) => [keyOf(row), id]));
  const seen = new Map<string, Place>();
  return linkRows(sheet, (draft, say, row) => {
    const key = keyOf(draft);
    const earlier = seen.get(key);
    const onFarm = idsOnFarm.get(key);
    if (earlier)
      say(
        "client",
        `the booking of "${draft.client}" on ${draft.eventOn} stands on ${placeInWords(earlier)} already: keep one of the two rows`,
      );
    else if (row.kept && onFarm !== undefined && onFarm !== row.kept.id)
      say(
        "client",
        `another booking of "${draft.client}" on ${draft.eventOn} is on the farm: write another name or day`,
      );
    else seen.set(key, row.place);
    for (const { field, message } of oddEventDays(draft)) say(headingOf(field, BOOKING_SHEET[field]), message);
    const unacceptableCrops = draft.unacceptableCrops.map((name) => cropName(name, "not_wanted", crops, say) ?? name);
    const lines = { pieces: [], stemLines: [], promises: [] };
    return { ...draft, spareShare: draft.spareShare ?? farm.spareShare, unacceptableCrops, ...lines };
  });
}

const keyOf = ({ client, eventOn }: { client: string; eventOn: string }): string => `${nameKey(client)}\n${eventOn}`;

function cropName(name: string, column: string, crops: NameBook, say: Say): string | null {
  const crop = crops.find(name);
  if (!crop.ok) say(column, crop.message);
  return crop.ok ? crop.name : null;
}

type Linked = Omit<LinkedBookings, "records">;

/** Leaves out every booking with a wrong line, and the other lines of it, each with a word why. */
function withoutHalves({ bookings, pieces, stems, promises }: Linked, owners: BookingOwners): Linked {
  const wrongLines = new Map<string, Place>();
  for (const { record, place, textIn, kept } of [...pieces.rows, ...stems.rows, ...promises.rows])
    if (record === null) {
      const named = { client: textIn("client"), eventOn: textIn("event_on") };
      const id = kept ? `farm ${kept.id}` : owners.idOf(named);
      if (!wrongLines.has(id)) wrongLines.set(id, place);
    }
  const whole = <T extends LineOf<object>>(sheet: SheetRows<T>): SheetRows<T> =>
    linkRows(sheet, (record, say) => {
      const wrong = wrongLines.get(owners.idOf(record));
      if (wrong)
        say(
          null,
          `left out, since a line of the booking of "${record.client}" has a problem: mend ${placeInWords(wrong)} first`,
        );
      return record;
    });
  return { bookings: whole(bookings), pieces: whole(pieces), stems: whole(stems), promises: whole(promises) };
}
