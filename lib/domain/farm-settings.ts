import { farmSchema, frostDatesSchema, statusWeightsSchema, winterCostsSchema } from "./farm";

/**
 * One scalar setting of the farm as the farm sheet writes it: snake_case with its unit ("wage_cents_per_hour"). Frost dates start
 * with "frost_" and status weights with "weight_". `group` is where the field lies in a Farm; null means at the top.
 */
export type FarmSetting = {
  readonly name: string;
  readonly group: "frost" | "statusWeights" | "winter" | null;
  readonly field: string;
};

const snakeCase = (camel: string): string => camel.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

const settingsOf = (shape: object, group: FarmSetting["group"], prefix = ""): FarmSetting[] =>
  Object.keys(shape).map((field) => ({ name: prefix + snakeCase(field), group, field }));

const { frost: _frost, statusWeights: _weights, winter: _winter, ...topShape } = farmSchema.shape;

/** Every setting of a farm: none can be forgotten, since they are read off the schema. */
export const FARM_SETTINGS: readonly FarmSetting[] = [
  ...settingsOf(topShape, null),
  ...settingsOf(frostDatesSchema.shape, "frost", "frost_"),
  ...settingsOf(statusWeightsSchema.shape, "statusWeights", "weight_"),
  ...settingsOf(winterCostsSchema.shape, "winter"),
];
