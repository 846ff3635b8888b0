import { index, integer, real, sqliteTable, text, unique } from "drizzle-orm/sqlite-core";
import { ROLES, STATUSES } from "#lib/domain/words";
import { checks, holds, isAboveZero, isDay, isList, isNamed, isShare, isWholeFrom, isYesNo, oneOf } from "./checks";
import { idOf, list, rowId, yesNo } from "./columns";
import { crop } from "./crops";

/** Recipes: what one piece takes. */
export const recipe = sqliteTable(
  "recipe",
  {
    id: rowId(),
    name: text("name").notNull(),
    unit: text("unit").notNull(),
    origin: text("origin").notNull(),
  },
  (table) => [unique("recipe_name_once").on(table.name), ...checks("recipe", isNamed("name"), isNamed("unit"))],
);

/** Lines of a recipe, `position` counting from 0. */
export const recipeLine = sqliteTable(
  "recipe_line",
  {
    id: rowId(),
    recipeId: idOf("recipe_id", () => recipe.id, "cascade"),
    position: integer("position").notNull(),
    role: text("role").notNull(),
    stemsPerPiece: real("stems_per_piece").notNull(),
    colours: text("colours").notNull(),
    /** The neutral colours too, beside the palette. A column of its own: SQLite cannot widen the check of the one before it. */
    orNeutral: yesNo("or_neutral").notNull().default(false),
    asks: list("asks").notNull().default([]),
  },
  (table) => [
    unique("recipe_line_place").on(table.recipeId, table.position),
    ...checks(
      "recipe_line",
      isWholeFrom("position", 0),
      oneOf("role", ROLES),
      isAboveZero("stems_per_piece"),
      oneOf("colours", ["palette", "any"]),
      isList("asks"),
      holds("or_neutral", "or_neutral IN (0, 1) AND (or_neutral = 0 OR colours = 'palette')"),
    ),
  ],
);

/** Bookings: one for each client and day. */
export const booking = sqliteTable(
  "booking",
  {
    id: rowId(),
    client: text("client").notNull(),
    status: text("status").notNull(),
    eventOn: text("event_on").notNull(),
    palette: list("palette").notNull(),
    spareShare: real("spare_share").notNull(),
    alternativeColours: list("alternative_colours").notNull().default([]),
    unacceptableColours: list("unacceptable_colours").notNull().default([]),
    note: text("note").notNull(),
    takenOn: text("taken_on"),
    priceCents: integer("price_cents"),
    lapsesAfter: text("lapses_after"),
    finalDueOn: text("final_due_on"),
    finalOn: text("final_on"),
    finalPieces: list("final_pieces").notNull().default([]),
    finalStems: integer("final_stems"),
    askedBefore: list("asked_before").notNull().default([]),
    leadDays: integer("last_cut_days_before"),
    designDays: integer("design_days_before"),
    deliverDays: integer("delivery_days_before"),
  },
  (table) => [
    unique("booking_once").on(table.client, table.eventOn),
    ...checks(
      "booking",
      isNamed("client"),
      oneOf("status", STATUSES),
      isDay("event_on"),
      isDay("taken_on"),
      isDay("lapses_after"),
      isDay("final_due_on"),
      isDay("final_on"),
      isList("final_pieces"),
      isList("asked_before"),
      isWholeFrom("final_stems", 0),
      isList("palette"),
      isList("alternative_colours"),
      isList("unacceptable_colours"),
      isShare("spare_share"),
      isWholeFrom("price_cents", 0),
      ...["last_cut_days_before", "design_days_before", "delivery_days_before"].map((column) => isWholeFrom(column, 0)),
      holds(
        "event_days_in_order",
        "ifnull(last_cut_days_before >= design_days_before, 1) AND ifnull(design_days_before >= delivery_days_before, 1) AND " +
          "ifnull(last_cut_days_before >= delivery_days_before, 1)",
      ),
    ),
  ],
);

/** So many of a recipe in a booking, `position` counting from 0. */
export const bookingPiece = sqliteTable(
  "booking_piece",
  {
    id: rowId(),
    bookingId: idOf("booking_id", () => booking.id, "cascade"),
    position: integer("position").notNull(),
    recipeId: idOf("recipe_id", () => recipe.id, "restrict"),
    pieceCount: real("piece_count").notNull(),
    colours: list("colours").notNull(),
  },
  (table) => [
    unique("booking_piece_place").on(table.bookingId, table.position),
    index("booking_piece_recipe").on(table.recipeId),
    ...checks("booking_piece", isWholeFrom("position", 0), isAboveZero("piece_count"), isList("colours")),
  ],
);

/** Stems a booking asks for directly, `position` counting from 0. */
export const bookingStemLine = sqliteTable(
  "booking_stem_line",
  {
    id: rowId(),
    bookingId: idOf("booking_id", () => booking.id, "cascade"),
    position: integer("position").notNull(),
    role: text("role").notNull(),
    cropId: integer("crop_id").references(() => crop.id, { onDelete: "restrict" }),
    cropOnly: yesNo("crop_only").notNull(),
    asks: list("asks").notNull().default([]),
    colours: list("colours").notNull(),
    stemCount: real("stem_count").notNull(),
  },
  (table) => [
    unique("booking_stem_line_place").on(table.bookingId, table.position),
    index("booking_stem_line_crop").on(table.cropId),
    ...checks(
      "booking_stem_line",
      isWholeFrom("position", 0),
      oneOf("role", ROLES),
      isYesNo("crop_only"),
      isList("asks"),
      holds("crop_only_of_a_crop", "crop_only = 0 OR crop_id IS NOT NULL"),
      isList("colours"),
      isAboveZero("stem_count"),
    ),
  ],
);

/** Stems promised to a booking, `position` counting from 0. */
export const bookingPromise = sqliteTable(
  "booking_promise",
  {
    id: rowId(),
    bookingId: idOf("booking_id", () => booking.id, "cascade"),
    position: integer("position").notNull(),
    role: text("role").notNull(),
    cropId: integer("crop_id").references(() => crop.id, { onDelete: "restrict" }),
    cropOnly: yesNo("crop_only").notNull(),
    asks: list("asks").notNull().default([]),
    colours: list("colours").notNull(),
    stemCount: integer("stem_count").notNull(),
  },
  (table) => [
    unique("booking_promise_place").on(table.bookingId, table.position),
    index("booking_promise_crop").on(table.cropId),
    ...checks(
      "booking_promise",
      isWholeFrom("position", 0),
      oneOf("role", ROLES),
      isYesNo("crop_only"),
      isList("asks"),
      isList("colours"),
      isWholeFrom("stem_count", 1),
    ),
  ],
);

/** Crops a client does not want, `position` counting from 0; a crop that leaves the farm leaves these lists too. */
export const bookingUnacceptableCrop = sqliteTable(
  "booking_unacceptable_crop",
  {
    id: rowId(),
    bookingId: idOf("booking_id", () => booking.id, "cascade"),
    position: integer("position").notNull(),
    cropId: idOf("crop_id", () => crop.id, "cascade"),
  },
  (table) => [
    unique("booking_unacceptable_crop_place").on(table.bookingId, table.position),
    index("booking_unacceptable_crop_crop").on(table.cropId),
    ...checks("booking_unacceptable_crop", isWholeFrom("position", 0)),
  ],
);
