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

const nameSchema = whatIfSchema.pick({ name: true });

export const readName = (values: FormValues): Parsed<{ name: string }> =>
  values.parse(nameSchema, { name: values.text("name") });
