import { z } from "zod";
import { daySchema, yearOf } from "./day";
import { DAY_IN_SEASONS, isSeasonYear } from "./season-years";
import { COLOURS, ROLES, STATUSES } from "./words";

const stemsEach = z.number("write a number of stems").gt(0, "more than 0 stems").max(10_000, "at most 10,000 stems");

/**
 * One line of a recipe: stems of a role in one piece; fractions are meant (one foliage stem serves several small pieces).
 * `colours` "palette" takes the booking's colours, "any" takes every colour.
 */
export const recipeLineSchema = z.object({
  role: z.enum(ROLES),
  stemsPerPiece: stemsEach,
  colours: z.enum(["palette", "any"]),
});
export type RecipeLine = z.infer<typeof recipeLineSchema>;

/** A piece of event work and the stems that one of it takes. `unit` says what one is: a piece, or a foot of garland. */
export const recipeSchema = z.object({
  id: z.int(),
  name: z.string().trim().min(1, "a recipe needs a name").max(80, "a name has at most 80 letters"),
  unit: z.string().trim().min(1, "say what one of it is: a piece, a foot"),
  lines: z.array(recipeLineSchema).min(1, "a recipe needs at least one line of stems"),
  origin: z.string(),
});
export type Recipe = z.infer<typeof recipeSchema>;

/** So many of a recipe in a booking. `colours`, when given, stand in place of the booking's palette. */
export const pieceSchema = z.object({
  recipeId: z.int(),
  pieceCount: z.number("write how many").gt(0, "more than 0").max(100_000, "at most 100,000"),
  colours: z.array(z.enum(COLOURS)),
});
export type Piece = z.infer<typeof pieceSchema>;

/**
 * Stems asked for directly. A named crop is preferred and others of the role may stand in for it, unless `cropOnly`.
 * An empty list of colours accepts every colour.
 */
export const stemLineSchema = z
  .object({
    role: z.enum(ROLES),
    cropId: z.int().nullable(),
    cropOnly: z.boolean(),
    colours: z.array(z.enum(COLOURS)),
    stemCount: stemsEach,
  })
  .refine((line) => !line.cropOnly || line.cropId !== null, {
    path: ["cropId"],
    message: "name the crop, or allow others in its place",
  });
export type StemLine = z.infer<typeof stemLineSchema>;

/** What a booking may hold before it has an id. Colours stand in order of preference. `spareShare` is added for breakage. */
const bookingFields = {
  client: z.string().trim().min(1, "name the client").max(120, "a name has at most 120 letters"),
  status: z.enum(STATUSES),
  eventOn: daySchema,
  palette: z.array(z.enum(COLOURS)),
  spareShare: z.number("write a share").min(0, "spare cannot be negative").max(1, "spare is at most 100 %"),
  unacceptableCropIds: z.array(z.int()),
  pieces: z.array(pieceSchema),
  stemLines: z.array(stemLineSchema),
  note: z.string().max(4000, "a note has at most 4,000 letters"),
};

/** What a form or a sheet may bring; a booking that is kept already may be of any day. */
export const bookingDraftSchema = z.object({
  ...bookingFields,
  eventOn: daySchema.refine((day) => isSeasonYear(yearOf(day)), DAY_IN_SEASONS),
});
export type BookingDraft = z.infer<typeof bookingDraftSchema>;

export const bookingSchema = z.object({ id: z.int(), ...bookingFields });
export type Booking = z.infer<typeof bookingSchema>;
