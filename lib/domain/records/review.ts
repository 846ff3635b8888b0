import { z } from "zod";
import { ROLE_WORDS } from "../trade-words";
import { ROLES } from "../words";
import { count, field, recordSchema, rowId } from "./field";
import { choice } from "./kinds";
import { BOOKING_NAMES } from "./names";

const stems = { of: "stems", unit: "stems", least: 0, most: 1_000_000 };

const review = {
  role: field(choice(ROLES, ROLE_WORDS), z.enum(ROLES), { label: "Role" }),
  plannedStems: count({ ...stems, label: "Planned", hint: "What the booking asked for, spare included." }),
  cutStems: count({ ...stems, label: "Cut", hint: "Good stems of the farm’s own that went to the event." }),
  boughtStems: count({ ...stems, label: "Bought", hint: "Stems bought in for the event." }),
  thrownAwayStems: count({ ...stems, label: "Thrown away", hint: "0 says that all were used." }),
};

/** What became of the stems of a role at an event, as a form writes it. */
export const REVIEW = { bookingId: rowId("Booking"), ...review };

/** A review, a row: one for each booking, named by client and day, and role. */
export const REVIEW_SHEET = { ...BOOKING_NAMES, ...review };

type Counted = { readonly cutStems: number; readonly boughtStems: number; readonly thrownAwayStems: number };

/** Whether no more was thrown away than was cut and bought. */
export const isWithinHad = ({ cutStems, boughtStems, thrownAwayStems }: Counted): boolean =>
  thrownAwayStems <= cutStems + boughtStems;

export const MORE_THROWN_THAN_HAD = "more stems thrown away than were cut and bought";

const check = { path: ["thrownAwayStems"], message: MORE_THROWN_THAN_HAD };

/** A review before it has an id. */
export const reviewDraftSchema = recordSchema(REVIEW).refine(isWithinHad, check);
export type ReviewDraft = z.infer<typeof reviewDraftSchema>;

/**
 * What became of the stems of a role at an event that is over, in stems: what was planned for it, what was cut and bought, and what was thrown
 * away; the rest was used. There is one record for each booking and role: recorded again, it takes the place of what was recorded before. The
 * numbers stand as they were when it was recorded, whatever becomes of recipes and curves.
 */
export const reviewSchema = recordSchema({ id: rowId("Id"), ...REVIEW }).refine(isWithinHad, check);
export type Review = z.infer<typeof reviewSchema>;

/** Stems of the event that were used, of those cut and bought. */
export const usedStems = ({ cutStems, boughtStems, thrownAwayStems }: Counted): number =>
  cutStems + boughtStems - thrownAwayStems;
