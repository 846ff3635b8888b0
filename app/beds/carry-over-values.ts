import { z } from "zod";
import { plantingSchema } from "#lib/domain/records/planting";
import type { FormValues } from "../ui/form-values";

const { seasonYear } = plantingSchema.shape;
const carryOverSchema = z
  .object({ fromSeason: seasonYear, toSeason: seasonYear })
  .refine(({ fromSeason, toSeason }) => fromSeason < toSeason, "plantings are carried into a later season");

/** Which season to copy into which. */
export const readCarryOver = (values: FormValues) =>
  values.parse(carryOverSchema, {
    fromSeason: values.hiddenNumber("fromSeason"),
    toSeason: values.hiddenNumber("toSeason"),
  });
