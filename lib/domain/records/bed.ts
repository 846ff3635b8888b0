import { z } from "zod";
import { daySchema } from "../day-schema";
import { field, number, type RecordOf, recordSchema, rowId } from "./field";
import { choice, day, listOf, note, word } from "./kinds";

/** Reasons of the ground to lift a bed whatever the sum says. */
export const BED_FLAGS = ["wet soil", "vole damage", "wanted for something else"] as const;
export type BedFlag = (typeof BED_FLAGS)[number];

/** A bed as its form and its row of the beds sheet write it. A spray has both days or neither. */
export const BED = {
  name: field(word, z.string().trim().min(1, "a bed needs a name").max(60, "a bed's name has at most 60 letters"), {
    label: "Name",
    heading: "bed",
    hint: "Short, as on its stake: D4.",
  }),
  lengthMetres: number({ above: 0, most: 1000, of: "metres", measure: "length", label: "Length", heading: "length_m" }),
  widthMetres: number({ above: 0, most: 100, of: "metres", measure: "length", label: "Width", heading: "width_m" }),
  flags: field(listOf(choice(BED_FLAGS)), z.array(z.enum(BED_FLAGS)), {
    absent: [],
    label: "Reasons of the ground to dig over winter",
    hint: "A bed with any of these is never proposed for keeping in the ground.",
  }),
  noEntryFrom: field(day, daySchema.nullable(), { absent: null, label: "Sprayed on" }),
  noEntryUntil: field(day, daySchema.nullable(), {
    absent: null,
    label: "No entry until",
    hint: "The product’s label sets the interval, and local rules govern; we know neither. Nothing in this bed is listed for picking before that day.",
  }),
  note: field(note, z.string(), { absent: "", label: "Note" }),
};

/** Of a spray both days are given, in their order, or neither. */
function checkSpray({ noEntryFrom, noEntryUntil }: RecordOf<typeof BED>, context: z.core.$RefinementCtx): void {
  const say = (message: string) => context.addIssue({ code: "custom", path: ["noEntryUntil"], message });
  if ((noEntryFrom === null) !== (noEntryUntil === null))
    say("a spray needs both days: sprayed on, and no entry until");
  if (noEntryFrom && noEntryUntil && noEntryUntil <= noEntryFrom) say("must come after the day of the spray");
}

/** A bed before it has an id. */
export const bedDraftSchema = recordSchema(BED).superRefine(checkSpray);

/**
 * A fixed growing strip. After a spray nobody cuts in it from `noEntryFrom` until the day before `noEntryUntil`;
 * the interval is the label's, typed by the user, never ours.
 */
export const bedSchema = recordSchema({ id: rowId("Id"), ...BED }).superRefine(checkSpray);
export type Bed = z.infer<typeof bedSchema>;

export const areaSquareMetres = (bed: Bed): number => bed.lengthMetres * bed.widthMetres;
