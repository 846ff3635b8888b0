"use server";

import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { action, idIn } from "../../action";
import { readCoolerStock } from "./cooler-values";

/** Puts stems into the cooler, or changes a line of them. */
export const saveCoolerStock = action(readCoolerStock, putCoolerStock);

/** Takes a line out of the cooler. */
export const deleteCoolerStock = action(idIn("stockId"), removeCoolerStock);
