import { z } from "zod";
import type { Parsed } from "#lib/domain/problem";
import {
  FARM,
  type Farm,
  FROST,
  farmSchema,
  frostDatesSchema,
  STATUS_WEIGHTS,
  statusWeightsSchema,
} from "#lib/domain/records/farm-settings";
import type { FormValues } from "../../ui/form-values";

/** The farm with the settings that the form of settings holds; what it does not hold stays. */
export function readSettings(values: FormValues, farm: Farm): Parsed<Farm> {
  const top = values.record(FARM, farm, { before: farm, given: { isInvented: farm.isInvented } });
  const frost = values.record(FROST, farm, { root: "frost.", schema: frostDatesSchema });
  const weights = { before: farm.statusWeights, root: "statusWeights.", schema: statusWeightsSchema };
  const statusWeights = values.record(STATUS_WEIGHTS, farm, weights);
  if (!top.ok || !frost.ok || !statusWeights.ok) return values.refusal();
  return {
    ok: true,
    parsed: { ...farm, ...top.parsed, frost: frost.parsed, statusWeights: statusWeights.parsed },
  };
}

/** The farm with the frost dates that a weather file gave. */
export function readFrost(values: FormValues, farm: Farm): Parsed<Farm> {
  const frost = values.record(FROST, farm, { root: "frost.", schema: frostDatesSchema });
  return frost.ok ? { ok: true, parsed: { ...farm, frost: frost.parsed } } : frost;
}

/** What someone says who starts a farm of their own. */
const ownFarmSchema = z.object({ name: farmSchema.shape.name, empties: z.boolean() });

export const readOwnFarm = (values: FormValues) =>
  values.parse(ownFarmSchema, { name: values.text("name"), empties: values.isTicked("empties") });
