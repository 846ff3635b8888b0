"use server";

import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { COOLER_LOT } from "#lib/domain/records/cooler-lot";
import { action, idIn } from "../../action";

/** Puts stems into the cooler, or changes a line of them. */
export const saveCoolerStock = action((values, { farm }) => {
  if (values.text("varietyId") === "") values.refuse("varietyId", "choose a variety");
  const lot = values.record(COOLER_LOT, farm);
  const id = values.text("stockId") ? values.hiddenNumber("stockId") : undefined;
  return lot.ok ? { ok: true, parsed: { ...lot.parsed, id } } : lot;
}, putCoolerStock);

/** Takes a line out of the cooler. */
export const deleteCoolerStock = action(idIn("stockId"), removeCoolerStock);
