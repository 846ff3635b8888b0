import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { CUT } from "#lib/domain/records/cut";
import { type Tally, tallySchema } from "#lib/domain/tally";
import { now } from "../clock";
import type { FormValues } from "../ui/form-values";

/** More records than a row has. */
const MOST = 1000;

/**
 * Reads what was counted of a row, where a browser without scripts sends it as a form. "None left" is 0, whatever number stands there, and so is a row that is
 * left with the number of its list untouched.
 */
export function tallyOfRow(values: FormValues): Parsed<Tally> {
  const restStands = values.text("rest") === "yes";
  const isNone = values.text("none") === "yes" || (restStands && values.text("stemsCut") === values.text("listed"));
  return values.parse(tallySchema, {
    cutOn: values.text("cutOn"),
    bedId: values.hiddenNumber("bedId"),
    varietyId: values.hiddenNumber("varietyId"),
    asked: values.json("asked"),
    stemsCut: isNone ? 0 : values.number("stemsCut"),
    ...(restStands ? { restStands } : {}),
    seenStems: values.hiddenNumber("seenStems"),
    seenRevision: values.hiddenNumber("seenRevision"),
    countedAt: now(),
  });
}

export const cutIds = (values: FormValues): Parsed<number[]> =>
  values.parse(z.array(z.int()).min(1).max(MOST), values.json("ids"));

const corrected = tallySchema.pick({ cutOn: true, bedId: true, varietyId: true }).extend({
  stemsCut: CUT.stemsCut.schema,
});

/** Reads what the record of a row is to be. */
export const correctedRow = (values: FormValues): Parsed<z.infer<typeof corrected>> =>
  values.parse(corrected, {
    cutOn: values.text("cutOn"),
    bedId: values.hiddenNumber("bedId"),
    varietyId: values.hiddenNumber("varietyId"),
    stemsCut: values.number("stemsCut"),
  });

const settled = z.object({ id: z.int(), isAdded: z.boolean() });

/** Reads what becomes of a count that is kept apart. */
export const settledTally = (values: FormValues): Parsed<z.infer<typeof settled>> =>
  values.parse(settled, { id: values.hiddenNumber("id"), isAdded: values.text("add") === "yes" });
