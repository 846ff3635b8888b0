import { z } from "zod";
import {
  bookingDraftSchema,
  bookingSchema,
  pieceSchema,
  recipeLineSchema,
  recipeSchema,
  stemLineSchema,
} from "#lib/domain/booking";
import type { Day } from "#lib/domain/day";
import type { BookingRecord, PieceRecord, RecipeRecord, StemLineRecord } from "#lib/domain/farm-records";
import { choice, day, decimal, listOf, prose, word, yesNo } from "#lib/domain/records/kinds";
import { COLOURS, ROLES, STATUSES } from "#lib/domain/words";
import { type ColumnsOf, maybe, needed, type RowOf } from "./columns";
import type { Say } from "./sheet-rows";

const booking = bookingSchema.shape;
const recipe = recipeSchema.shape;
const line = recipeLineSchema.shape;
const name = z.string().trim();
const colours = maybe(listOf(choice(COLOURS)), booking.palette, []);

/**
 * A line of a recipe a row; the rows of one recipe agree in `unit` and `origin`. Absent or empty: `unit` is "piece" and `colours`
 * "palette". Without a column `origin` it is "own".
 */
export const RECIPE_COLUMNS = {
  recipe: needed(word, recipe.name),
  unit: maybe(word, recipe.unit, "piece"),
  role: needed(choice(ROLES), line.role),
  stems_per_piece: needed(decimal, line.stemsPerPiece),
  colours: maybe(choice(["palette", "any"]), line.colours, "palette" as const),
  origin: maybe(prose, recipe.origin, "own"),
} satisfies ColumnsOf<"recipes">;

/** A recipe with one of its lines: rows of one name become one recipe. */
export const toRecipeLine = (row: RowOf<typeof RECIPE_COLUMNS>): RecipeRecord => ({
  name: row.recipe,
  unit: row.unit,
  origin: row.origin,
  lines: [{ role: row.role, stemsPerPiece: row.stems_per_piece, colours: row.colours }],
});

/** A booking as written: spare null is the farm's. */
export type BookingDraftRow = Omit<BookingRecord, "spareShare"> & { readonly spareShare: number | null };

/** A booking a row. Absent or empty: `status` enquiry, no palette, `spare_share` the farm's, nothing unwanted, and no note. */
export const BOOKING_COLUMNS = {
  client: needed(word, booking.client),
  event_on: needed(day, bookingDraftSchema.shape.eventOn),
  status: maybe(choice(STATUSES), booking.status, "enquiry" as const),
  palette: colours,
  spare_share: maybe(decimal, booking.spareShare, null),
  not_wanted: maybe(listOf(word), z.array(name), []),
  note: maybe(prose, booking.note, ""),
} satisfies ColumnsOf<"bookings">;

export const toBookingDraft = (row: RowOf<typeof BOOKING_COLUMNS>): BookingDraftRow => ({
  client: row.client,
  status: row.status,
  eventOn: row.event_on,
  palette: row.palette,
  spareShare: row.spare_share,
  unacceptableCrops: row.not_wanted,
  pieces: [],
  stemLines: [],
  note: row.note,
});

/** A line that belongs to a booking, which is known by client and day. */
export type LineOf<T> = { readonly client: string; readonly eventOn: Day; readonly line: T };

/** Pieces of a booking a row. `colours` absent or empty: the booking's palette. */
export const PIECE_COLUMNS = {
  client: needed(word, booking.client),
  event_on: needed(day, bookingDraftSchema.shape.eventOn),
  recipe: needed(word, name),
  count: needed(decimal, pieceSchema.shape.pieceCount),
  colours,
} satisfies ColumnsOf<"pieces">;

export const toPieceLine = (row: RowOf<typeof PIECE_COLUMNS>): LineOf<PieceRecord> => ({
  client: row.client,
  eventOn: row.event_on,
  line: { recipe: row.recipe, pieceCount: row.count, colours: row.colours },
});

/**
 * Stems asked for directly, a row. Absent or empty: `crop` any that has the role, `crop_only` no (others of the role may stand in),
 * `colours` every colour.
 */
export const STEM_COLUMNS = {
  client: needed(word, booking.client),
  event_on: needed(day, bookingDraftSchema.shape.eventOn),
  role: needed(choice(ROLES), stemLineSchema.shape.role),
  crop: maybe(word, name, null),
  crop_only: maybe(yesNo, stemLineSchema.shape.cropOnly, false),
  colours,
  stems: needed(decimal, stemLineSchema.shape.stemCount),
} satisfies ColumnsOf<"stems">;

export function toStemLine(row: RowOf<typeof STEM_COLUMNS>, say: Say): LineOf<StemLineRecord> {
  const { role, crop, crop_only: cropOnly, stems: stemCount } = row;
  const line = { role, cropOnly, colours: row.colours, stemCount };
  const checked = stemLineSchema.safeParse({ ...line, cropId: crop === null ? null : 0 });
  for (const { message } of checked.error?.issues ?? [])
    say("crop", `crop_only is yes, and the crop is empty: ${message}`);
  return {
    client: row.client,
    eventOn: row.event_on,
    line: { ...line, crop },
  };
}
