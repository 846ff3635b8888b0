import { z } from "zod";
import { daySchema } from "../day-schema";
import { ROLES } from "../words";
import { BOOKING } from "./booking";
import { count, field, type RecordOf } from "./field";
import { choice, day } from "./kinds";
import { STEM_LINE } from "./stem-line";

/**
 * What somebody on the phone asks for: so many stems of a role, in colours that all will do, the best first, on one day. No colours means any.
 * Whole stems, as a caller counts them: the farm's spare comes on top.
 */
export const ENQUIRY = {
  stemCount: count({ above: 0, most: STEM_LINE.stemCount.limits?.most, of: "stems", label: "Stems" }),
  colours: { ...BOOKING.palette, label: "Colours", hint: undefined },
  role: field(choice(ROLES), z.enum(ROLES), { label: "Role" }),
  eventOn: BOOKING.eventOn,
};

export type Enquiry = RecordOf<typeof ENQUIRY>;

/** What is asked to hold an enquiry: for whom, and until when. */
export const HOLD = {
  client: BOOKING.client,
  heldUntil: field(day, daySchema, { label: "Hold it until" }),
};
