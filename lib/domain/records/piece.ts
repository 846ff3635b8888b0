import { z } from "zod";
import { COLOURS } from "../words";
import { field, number, recordSchema, rowId } from "./field";
import { colour, listOf } from "./kinds";
import { BOOKING_NAMES, nameOf } from "./names";

const piece = {
  pieceCount: number({ above: 0, most: 100_000, label: "How many", heading: "count" }),
  colours: field(listOf(colour), z.array(z.enum(COLOURS)), { absent: [], label: "Colours" }),
};

export const PIECE = { recipeId: rowId("Piece"), ...piece };

/** Pieces of a booking a row. `colours` absent or empty: the booking's palette. */
export const PIECE_SHEET = { ...BOOKING_NAMES, recipe: nameOf("Piece"), ...piece };

/** So many of a recipe in a booking. `colours`, when given, stand in place of the booking's palette. */
export const pieceSchema = recordSchema(PIECE);
export type Piece = z.infer<typeof pieceSchema>;
