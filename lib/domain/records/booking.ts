import { z } from "zod";
import { daySchema } from "../day-schema";
import { STATUS_WORDS } from "../trade-words";
import { COLOURS, STATUSES } from "../words";
import { EARLIER_ASKS } from "./earlier-ask";
import { OWN_EVENT_DAYS, oddEventDays } from "./event-days";
import { cents, field, open, recordSchema, rowId, share } from "./field";
import { FINAL_COUNT } from "./final-count";
import { choice, colour, day, listOf, note, word } from "./kinds";
import { BOOKING_NAMES } from "./names";
import { pieceSchema } from "./piece";
import { promisedStemsSchema } from "./promised-stems";
import { stemLineSchema } from "./stem-line";

/**
 * A booking as its form and its row write it, its lines aside. Colours stand in order of preference; `alternativeColours` follow the palette wherever
 * it is asked for, and a stem of an unacceptable colour is never used. `spareShare` is added for breakage. `lapsesAfter` is the last day on which an
 * enquiry or a hold asks for anything; null where it never lapses.
 */
export const BOOKING = {
  ...BOOKING_NAMES,
  status: field(choice(STATUSES, STATUS_WORDS), z.enum(STATUSES), { absent: "enquiry", label: "Status" }),
  lapsesAfter: open(field(day, daySchema, { label: "Lapses after" }), {
    hint: "An enquiry or a hold asks for nothing from the next day on. Left empty it never lapses.",
  }),
  palette: field(listOf(colour), z.array(z.enum(COLOURS)), {
    absent: [],
    label: "Palette, best colour first",
    hint: "For example: blush, cream, white. Leave it empty if any colour will do.",
  }),
  alternativeColours: field(listOf(colour), z.array(z.enum(COLOURS)), {
    absent: [],
    label: "Alternatives the client named",
    hint: "Taken where the palette falls short, best first. For example: apricot, peach.",
    heading: "alternatives",
  }),
  unacceptableColours: field(listOf(colour), z.array(z.enum(COLOURS)), {
    absent: [],
    label: "Colours not wanted",
    hint: "For example: white. No filler or foliage of such a colour is used either.",
    heading: "colours_not_wanted",
  }),
  spareShare: share({ label: "Spare" }),
  ...OWN_EVENT_DAYS,
  takenOn: open(
    field(day, daySchema, {
      label: "Taken on",
      hint: "On days before it nothing was cut for it, but what is recorded. Left empty, it was known all season.",
    }),
  ),
  priceCents: open(cents({ label: "Price", hint: "What the client pays. Left empty, the review leaves money out." })),
  finalDueOn: open(
    field(day, daySchema, {
      label: "Final count due on",
      hint: "The day from which the tool asks for it. Left empty: so many days before the event as the farm says.",
    }),
  ),
  note: field(note, z.string().max(4000, "a note has at most 4,000 letters"), { absent: "", label: "Note" }),
};

/** A booking a row. Absent or empty: `status` enquiry, no palette, no alternatives, `spare_share` the farm's, nothing unwanted, no day on which it lapses, the farm's event days, known all season, the final count by the farm's habit and not taken, never made larger, and no note. */
export const BOOKING_SHEET = {
  ...BOOKING_NAMES,
  status: BOOKING.status,
  lapsesAfter: BOOKING.lapsesAfter,
  palette: BOOKING.palette,
  alternativeColours: BOOKING.alternativeColours,
  unacceptableColours: BOOKING.unacceptableColours,
  spareShare: open(BOOKING.spareShare),
  ...OWN_EVENT_DAYS,
  priceCents: BOOKING.priceCents,
  unacceptableCrops: field(listOf(word), z.array(z.string().trim()), {
    absent: [],
    label: "Not wanted",
    heading: "not_wanted",
  }),
  takenOn: BOOKING.takenOn,
  finalDueOn: BOOKING.finalDueOn,
  ...FINAL_COUNT,
  ...EARLIER_ASKS,
  note: BOOKING.note,
};

const lines = {
  unacceptableCropIds: z.array(z.int()),
  pieces: z.array(pieceSchema),
  stemLines: z.array(stemLineSchema),
  /** Binding while the booking is confirmed. */
  promises: z.array(promisedStemsSchema),
};

type Checked = Parameters<typeof oddEventDays>[0];
type Context = { addIssue: (issue: { code: "custom"; path: string[]; message: string }) => void };

const inOrder = (booking: Checked, context: Context) => {
  for (const { field, message } of oddEventDays(booking)) context.addIssue({ code: "custom", path: [field], message });
};

/** What a form says of a booking beside its lines. */
export const bookingFactsSchema = recordSchema(BOOKING).superRefine(inOrder);

/** What a form or a sheet may bring. */
export const bookingDraftSchema = recordSchema({ ...BOOKING, ...FINAL_COUNT, ...EARLIER_ASKS })
  .extend(lines)
  .superRefine(inOrder);
export type BookingDraft = z.infer<typeof bookingDraftSchema>;

/** A booking that is kept already may be of any day. */
export const bookingSchema = recordSchema({ id: rowId("Id"), ...BOOKING, ...FINAL_COUNT, ...EARLIER_ASKS }).extend({
  ...lines,
  eventOn: daySchema,
});
export type Booking = z.infer<typeof bookingSchema>;
