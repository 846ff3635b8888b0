import { type CoolerStock, coolerStockSchema } from "#lib/domain/bed";
import type { Parsed } from "#lib/domain/problem";
import type { FormValues } from "../../ui/form-values";

const stockDraftSchema = coolerStockSchema.partial({ id: true });

/** Stems in the cooler as their form says; with an id, in place of that line. */
export const readCoolerStock = (values: FormValues): Parsed<Omit<CoolerStock, "id"> & { id?: number }> =>
  values.parse(stockDraftSchema, {
    ...(values.text("stockId") ? { id: values.hiddenNumber("stockId") } : {}),
    varietyId: values.hiddenNumber("varietyId"),
    cutOn: values.text("cutOn"),
    stemCount: values.number("stemCount"),
  });
