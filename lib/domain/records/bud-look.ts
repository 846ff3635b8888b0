import { z } from "zod";
import { daySchema } from "../day-schema";
import { count, field, open, recordSchema, rowId } from "./field";
import { choice, day } from "./kinds";
import { nameOf } from "./names";
import { VARIETY_NAMES } from "./variety";

/** What a look at a bed's buds says, in the words of a walk along the beds. */
export const BUD_SIGNS = ["first bloom", "buds showing", "early", "as due", "late"] as const;

const look = {
  lookedOn: field(day, daySchema, { label: "Looked on" }),
  sign: field(choice(BUD_SIGNS), z.enum(BUD_SIGNS), { label: "What was seen" }),
  daysToCut: open(
    count({
      of: "days",
      unit: "days",
      least: 0,
      most: 365,
      label: "Days to the first cut",
      hint: "As you judge them; left empty, the sign alone counts.",
    }),
  ),
};

/** A look as a form writes it. */
export const BUD_LOOK = { bedId: rowId("Bed"), varietyId: rowId("Variety"), ...look };

/** A look, a row: one for each day, bed and variety. */
export const BUD_LOOK_SHEET = { bed: nameOf("Bed"), ...VARIETY_NAMES, ...look };

/** A look before it has an id. */
export const budLookDraftSchema = recordSchema(BUD_LOOK);
export type BudLookDraft = z.infer<typeof budLookDraftSchema>;

/**
 * What the buds of a variety in a bed looked like on a day. There is one record for each of these together: recorded again, it takes the place of what
 * was recorded before. `daysToCut` is the grower's own judgement, null where she gave none.
 */
export const budLookSchema = recordSchema({ id: rowId("Id"), ...BUD_LOOK });
export type BudLook = z.infer<typeof budLookSchema>;
