import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import { type Farm, FROST, farmSchema, frostDatesSchema } from "#lib/domain/records/farm-settings";
import type { FormValues } from "../../ui/form-values";

/** The farm with the frost dates that a weather file gave. */
export function readFrost(values: FormValues, farm: Farm): Parsed<Farm> {
  const frost = values.record(FROST, farm, { root: "frost.", schema: frostDatesSchema });
  return frost.ok ? { ok: true, parsed: { ...farm, frost: frost.parsed } } : frost;
}

/** What someone says who starts a farm of their own. */
const ownFarmSchema = z.object({ name: farmSchema.shape.name, empties: z.boolean() });

export const readOwnFarm = (values: FormValues) =>
  values.parse(ownFarmSchema, { name: values.text("name"), empties: values.isTicked("empties") });
