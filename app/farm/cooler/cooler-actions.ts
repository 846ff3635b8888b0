"use server";

import { putCoolerStock, removeCoolerStock } from "#db/write/beds";
import { recordMoves, removeMove } from "#db/write/cooler-moves";
import { COOLER_LOT } from "#lib/domain/records/cooler-lot";
import { action, idIn } from "../../action";
import { today } from "../../clock";
import { notTheOwner } from "../../people/who";
import { moveOf, pastLots } from "./move-values";

/** Puts stems into the cooler, or changes a line of them. */
export const saveCoolerStock = action((values, { farm }) => {
  if (values.text("varietyId") === "") values.refuse("varietyId", "choose a variety");
  const lot = values.record(COOLER_LOT, farm);
  const id = values.text("stockId") ? values.hiddenNumber("stockId") : undefined;
  return lot.ok ? { ok: true, parsed: { ...lot.parsed, id } } : lot;
}, putCoolerStock);

/** Takes a line out of the cooler. */
export const deleteCoolerStock = action(idIn("stockId"), removeCoolerStock);

/** Records that stems of a lot were taken out or thrown away. */
export const moveStems = action((values, { farm }) => moveOf(values, farm, today()), recordMoves);

/** Records all that is past its days as thrown away. */
export const clearPast = action((values) => pastLots(values, today()), recordMoves);

/** Takes the record of stems that left back. Whoever is not the owner takes back only what is their own. */
export const takeBackMove = action(idIn("moveId"), (database, id) => removeMove(database, id, notTheOwner()));
