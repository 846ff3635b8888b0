"use server";

import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { farmDatabase } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { readCoolerStock } from "./cooler-values";

/** Puts stems into the cooler, or changes a line of them. */
export async function saveCoolerStock(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const stock = readCoolerStock(values);
  return stock.ok ? taken(values, putCoolerStock(farmDatabase(), stock.parsed)) : values.refused();
}

/** Takes a line out of the cooler. */
export async function deleteCoolerStock(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  return taken(values, removeCoolerStock(farmDatabase(), values.hiddenNumber("stockId")));
}
