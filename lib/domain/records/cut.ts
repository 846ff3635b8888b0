import { z } from "zod";
import { daySchema } from "../day-schema";
import { count, field, open, recordSchema, rowId } from "./field";
import { day, yesNo } from "./kinds";
import { BOOKING_NAMES, nameOf } from "./names";
import { VARIETY_NAMES } from "./variety";

const stems = { of: "stems", unit: "stems", least: 0, most: 1_000_000 };

const cut = {
  cutOn: field(day, daySchema, { label: "Cut on" }),
  stemsCut: count({ ...stems, label: "Stems cut", hint: "Before grading. 0 says that none were there." }),
  stemsAsked: open(
    count({ ...stems, label: "The list asked for", hint: "Left empty, what was cut is all that was there." }),
  ),
  goodStems: open(count({ ...stems, label: "Good stems", hint: "Left empty, the planting’s share is graded out." })),
  restStands: field(yesNo, z.boolean(), {
    absent: false,
    label: "The rest was left to stand",
    hint: "It waits for the next picking day, as long as the crop keeps in the field.",
  }),
};

/** A cut as a form writes it. `bookingId` null: for nobody yet. */
export const CUT = {
  bedId: rowId("Bed"),
  varietyId: rowId("Variety"),
  bookingId: open(rowId("Booking")),
  ...cut,
};

/** A cut, a row. `client` and `event_on` name the booking it was cut for, both or neither. */
export const CUT_SHEET = {
  bed: nameOf("Bed"),
  ...VARIETY_NAMES,
  client: open(BOOKING_NAMES.client),
  eventOn: open(field(day, daySchema, { label: "Day of the event" })),
  ...cut,
};

const isWithinCut = ({ stemsCut, goodStems }: { stemsCut: number; goodStems: number | null }): boolean =>
  goodStems === null || goodStems <= stemsCut;

export const MORE_GOOD_THAN_CUT = "more good stems than were cut";

/** A cut before it has an id. */
export const cutDraftSchema = recordSchema(CUT).refine(isWithinCut, {
  path: ["goodStems"],
  message: MORE_GOOD_THAN_CUT,
});
export type CutDraft = z.infer<typeof cutDraftSchema>;

/**
 * Stems of a variety that were cut in a bed on a day, for one booking or for nobody yet (`bookingId` null). There is one record for each of these
 * together: recorded again, it takes the place of what was recorded before. `stemsCut` counts before grading; `stemsAsked` is what the list had asked for,
 * null where no list did; `goodStems` what was fit to use, null where nobody counted; `restStands` whether what was not cut was left for the next picking day [T14].
 */
export const cutSchema = recordSchema({ id: rowId("Id"), ...CUT }).refine(isWithinCut, {
  path: ["goodStems"],
  message: MORE_GOOD_THAN_CUT,
});
export type Cut = z.infer<typeof cutSchema>;
