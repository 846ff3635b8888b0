import { z } from "zod";
import { daySchema } from "../day-schema";
import { count, field, open, recordSchema, rowId } from "./field";
import { choice, day } from "./kinds";
import { BOOKING_NAMES } from "./names";
import { VARIETY_NAMES } from "./variety";

/** How stems leave the cooler: to be used, or dead. */
export const MOVE_KINDS = ["taken out", "thrown away"] as const;

const move = {
  movedOn: field(day, daySchema, { label: "Day" }),
  cutOn: field(day, daySchema, { label: "Cut on" }),
  kind: field(choice(MOVE_KINDS), z.enum(MOVE_KINDS), { label: "What was done" }),
  stemCount: count({ of: "stems", least: 1, most: 1_000_000, label: "Stems", heading: "stems" }),
};

/** A move as a form writes it. `bookingId` null: for nobody named. */
export const COOLER_MOVE = { varietyId: rowId("Variety"), bookingId: open(rowId("Booking")), ...move };

/** A move, a row. `client` and `event_on` name the booking it was for, both or neither. */
export const COOLER_MOVE_SHEET = {
  ...VARIETY_NAMES,
  client: open(BOOKING_NAMES.client),
  eventOn: open(field(day, daySchema, { label: "Day of the event" })),
  ...move,
};

/** A move before it has an id. */
export const coolerMoveDraftSchema = recordSchema(COOLER_MOVE);
export type CoolerMoveDraft = z.infer<typeof coolerMoveDraftSchema>;

/**
 * Stems that left the cooler on a day. What stands there of a variety cut on one day is one lot, whoever cut it: `varietyId` and `cutOn` name it. Moves add
 * up: two alike are two.
 */
export const coolerMoveSchema = recordSchema({ id: rowId("Id"), ...COOLER_MOVE });
export type CoolerMove = z.infer<typeof coolerMoveSchema>;
