import { z } from "zod";
import { daySchema } from "../day-schema";
import { count, field, type RecordOf, recordSchema, rowId } from "./field";
import { choice, day } from "./kinds";
import { nameOf } from "./names";
import { VARIETY_NAMES } from "./variety";

/** What takes plants. Of the two winters the first is counted in a bed kept in the ground, the second as clumps come out of the store. */
export const LOSS_CAUSES = [
  "winter in the ground",
  "winter in store",
  "voles",
  "hail or wind",
  "rot or sickness",
  "something else",
] as const;
export type LossCause = (typeof LOSS_CAUSES)[number];

const plants = (label: string, least: number, hint?: string) =>
  count({ of: "plants", unit: "plants", least, most: 1_000_000, label, hint });

const loss = {
  seenOn: field(day, daySchema, { label: "Seen on" }),
  cause: field(choice(LOSS_CAUSES), z.enum(LOSS_CAUSES), { label: "What took them" }),
  plantsBefore: plants("Plants before", 1),
  plantsLeft: plants("Plants left", 0, "All of them where nothing was lost: that counts too."),
};

/** A count of what is left, as a form writes it. */
export const LOSS = { bedId: rowId("Bed"), varietyId: rowId("Variety"), ...loss };

/** A count of what is left, a row: one for each day, bed, variety and cause. */
export const LOSS_SHEET = { bed: nameOf("Bed"), ...VARIETY_NAMES, ...loss };

type Count = Pick<RecordOf<typeof LOSS>, "plantsBefore" | "plantsLeft">;

/** What is wrong where more are left than there were; null where that is not so. */
export const leftOfBefore = ({ plantsBefore, plantsLeft }: Count): string | null =>
  plantsLeft > plantsBefore ? `at most the ${plantsBefore} that were there: mend one of the two numbers` : null;

function checkCount(count: Count, context: z.core.$RefinementCtx): void {
  const message = leftOfBefore(count);
  if (message) context.addIssue({ code: "custom", path: ["plantsLeft"], message });
}

/** A loss before it has an id. */
export const lossDraftSchema = recordSchema(LOSS).superRefine(checkCount);
export type LossDraft = z.infer<typeof lossDraftSchema>;

/**
 * What was left of a variety in a bed on a day: so many of so many plants, the rest taken by one cause. There is one record for each day, bed, variety and cause:
 * recorded again, it takes the place of what was recorded before. All left is a record too: of a winter it says that every clump came through.
 */
export const lossSchema = recordSchema({ id: rowId("Id"), ...LOSS }).superRefine(checkCount);
export type Loss = z.infer<typeof lossSchema>;
