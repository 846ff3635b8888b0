import type { BookingRecord, PieceRecord, PromiseRecord, StemLineRecord } from "#lib/domain/farm-records";
import { groupsOf } from "#lib/domain/groups-of";
import { BOOKING_SHEET } from "#lib/domain/records/booking";
import type { Farm } from "#lib/domain/records/farm-settings";
import { PIECE_SHEET } from "#lib/domain/records/piece";
import { PROMISE_SHEET } from "#lib/domain/records/promised-stems";
import { STEM_SHEET } from "#lib/domain/records/stem-line";
import type { BookingOwners } from "./booking-owners";
import type { KeptRow, KeptRows } from "./known-farm";
import type { LinkedBookings } from "./link-bookings";
import type { NameBook } from "./name-book";
import { isUnchanged } from "./row-differences";
import { bookingRow } from "./rows-of-records";
import type { SheetRow } from "./sheet-rows";
import type { RowOf } from "./to-records";

type OnFarm = { readonly farm: Farm; readonly rows: KeptRows; readonly crops: NameBook; readonly recipes: NameBook };

/** What the upload says of one booking. */
type Touched = {
  farmId: number | null;
  booking: SheetRow<BookingRecord> | null;
  readonly pieces: SheetRow<RowOf<"pieces">>[];
  readonly stems: SheetRow<RowOf<"stems">>[];
  readonly promises: SheetRow<RowOf<"promises">>[];
};

/**
 * The bookings that clean rows make new or change, each whole: what the upload says of it over what the farm has. Its lines stand in the
 * farm's order, then those that are new in the order of their rows.
 */
export function gatherBookings(
  linked: Omit<LinkedBookings, "records">,
  owners: BookingOwners,
  { farm, rows, crops, recipes }: OnFarm,
): BookingRecord[] {
  const touched = touchedBookings(linked, owners);
  const keptOf = byId(rows.bookings);
  const piecesOf = byId(rows.pieces);
  const stemsOf = byId(rows.stems);
  const promisesOf = byId(rows.promises);
  const cropNamed = (crop: string | null) => (crop === null ? null : crops.named(crop));
  return [...touched.values()].flatMap(({ farmId, booking, pieces, stems, promises }): BookingRecord[] => {
    const [kept] = (farmId !== null && keptOf.get(farmId)) || [];
    const base = booking?.record ?? (kept && bookingOfRow(kept.row, farm));
    if (!base) return [];
    const promisesKept = kept && isHeldTo(bookingOfRow(kept.row, farm), base) ? (promisesOf.get(kept.id) ?? []) : [];
    const lines = {
      pieces: merged((farmId !== null && piecesOf.get(farmId)) || [], pieces).map(
        ({ recipe, pieceCount, colours }): PieceRecord => ({ recipe: recipes.named(recipe), pieceCount, colours }),
      ),
      stemLines: merged((farmId !== null && stemsOf.get(farmId)) || [], stems).map(
        ({ role, crop, cropOnly, asks, colours, stemCount }): StemLineRecord => ({
          role,
          crop: cropNamed(crop),
          cropOnly,
          asks,
          colours,
          stemCount,
        }),
      ),
      promises: merged(promisesKept, promises).map(
        ({ role, crop, cropOnly, asks, colours, stemCount }): PromiseRecord => ({
          role,
          crop: cropNamed(crop),
          cropOnly,
          asks,
          colours,
          stemCount,
        }),
      ),
    };
    if (farmId === null) return [{ ...base, ...lines }];
    const isSame =
      (!booking?.record || isUnchanged(booking.kept, bookingRow(booking.record), BOOKING_SHEET)) &&
      pieces.every((row) => row.record && isUnchanged(row.kept, row.record, PIECE_SHEET)) &&
      stems.every((row) => row.record && isUnchanged(row.kept, row.record, STEM_SHEET)) &&
      promises.every((row) => row.record && isUnchanged(row.kept, row.record, PROMISE_SHEET));
    return isSame ? [] : [{ ...base, ...lines, id: farmId }];
  });
}

/** Whether a booking is still held to what it was promised: a promise is of a day and of a signed booking. */
const isHeldTo = (was: BookingRecord, now: BookingRecord): boolean =>
  was.eventOn === now.eventOn && (was.status !== "confirmed" || now.status === "confirmed");

function touchedBookings(
  { bookings, pieces, stems, promises }: Omit<LinkedBookings, "records">,
  owners: BookingOwners,
) {
  const touched = new Map<string, Touched>();
  const of = (named: { client: string; eventOn: string }): Touched => {
    const id = owners.idOf(named);
    const one = touched.get(id) ?? {
      farmId: owners.find(named)?.farmId ?? null,
      booking: null,
      pieces: [],
      stems: [],
      promises: [],
    };
    touched.set(id, one);
    return one;
  };
  for (const row of bookings.rows) if (row.record) of(row.record).booking = row;
  for (const row of pieces.rows) if (row.record) of(row.record).pieces.push(row);
  for (const row of stems.rows) if (row.record) of(row.record).stems.push(row);
  for (const row of promises.rows) if (row.record) of(row.record).promises.push(row);
  return touched;
}

/** The farm's lines, each as its row in the upload says it, and the new ones after them. */
function merged<Row>(kept: readonly KeptRow<Row>[], rows: readonly SheetRow<Row>[]): Row[] {
  const byKey = new Map(rows.flatMap((row) => (row.kept ? [[row.kept.key, row.record] as const] : [])));
  const stayed = kept.map((one) => byKey.get(one.key) ?? one.row);
  return [...stayed, ...rows.flatMap((row) => (row.kept || row.record === null ? [] : [row.record]))];
}

const byId = <Row>(kept: readonly KeptRow<Row>[]) => groupsOf(kept, ({ id }) => id);

const bookingOfRow = (row: RowOf<"bookings">, farm: Farm): BookingRecord => ({
  ...row,
  spareShare: row.spareShare ?? farm.spareShare,
  pieces: [],
  stemLines: [],
  promises: [],
});
