import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { whatIfSchema } from "#lib/domain/what-if";
import type { FormValues } from "../ui/form-values";

const namedSchema = whatIfSchema.pick({ name: true, seasonYear: true }).extend({ fromId: z.int().nullable() });

/** A new what-if as its form says: its name, its season, and the what-if whose changes it starts from, if any. */
export type NewWhatIf = z.infer<typeof namedSchema>;

export const readNewWhatIf = (values: FormValues): Parsed<NewWhatIf> =>
  values.parse(namedSchema, {
    name: values.text("name"),
    seasonYear: values.hiddenNumber("seasonYear"),
    fromId: values.text("fromId") === "" ? null : values.hiddenNumber("fromId"),
  });

const renameSchema = whatIfSchema.pick({ name: true }).extend({ whatIfId: whatIfSchema.shape.id });

/** Another name for a what-if. */
export const readName = (values: FormValues): Parsed<{ whatIfId: number; name: string }> =>
  values.parse(renameSchema, { whatIfId: values.hiddenNumber("whatIfId"), name: values.text("name") });
