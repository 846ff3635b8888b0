import type { z } from "zod";
import { daySchema } from "../day-schema";
import { count, field, recordSchema, rowId } from "./field";
import { day } from "./kinds";
import { VARIETY_NAMES } from "./variety";

const lot = {
  cutOn: field(day, daySchema, { label: "Cut on" }),
  stemCount: count({ of: "stems", least: 0, most: 1_000_000, label: "Stems", heading: "stems" }),
};

/** Stems in the cooler as a form writes them. */
export const COOLER_LOT = { varietyId: rowId("Variety"), ...lot };

/** Stems in the cooler, a row. `colour` absent or empty: that of the variety. */
export const COOLER_SHEET = { ...VARIETY_NAMES, ...lot };

/** Stems standing in the cooler that no forecast holds (bought in, or more than a bed was forecast): supply like any other, from the day they were cut. */
export const coolerStockSchema = recordSchema({ id: rowId("Id"), ...COOLER_LOT });
export type CoolerStock = z.infer<typeof coolerStockSchema>;
