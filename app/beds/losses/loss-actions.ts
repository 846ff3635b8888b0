"use server";

import { recordLoss, removeLoss } from "#db/write/losses";
import { action, idIn } from "../../action";
import { today } from "../../clock";
import { notTheOwner } from "../../people/who";
import { readLoss } from "./loss-values";

/** Writes down what winter, voles or hail left of a planting. */
export const noteLoss = action((values, { farm }) => readLoss(values, farm, today()), recordLoss);

/** Takes back what was written down. Whoever is not the owner takes back only what is their own. */
export const takeBackLoss = action(idIn("lossId"), (database, id) => removeLoss(database, id, notTheOwner()));
