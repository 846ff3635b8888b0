import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { CUT } from "#lib/domain/records/cut";
import { type Tally, tallySchema } from "#lib/domain/tally";
import { now } from "../clock";
import type { FormValues } from "../ui/form-values";

/** More records than a row has. */
const MOST = 1000;

/** Reads what was counted of a row, where a browser without scripts sends it as a form. "None left" is 0, whatever number stands there. */
export const tallyOfRow = (values: FormValues): Parsed<Tally> =>
  values.parse(tallySchema, {
    cutOn: values.text("cutOn"),
    bedId: values.hiddenNumber("bedId"),
    varietyId: values.hiddenNumber("varietyId"),
    asked: values.json("asked"),
    stemsCut: values.text("none") === "yes" ? 0 : values.number("stemsCut"),
    seenStems: values.hiddenNumber("seenStems"),
    seenRevision: values.hiddenNumber("seenRevision"),
    countedAt: now(),
  });

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
