"use server";

import { recordCuts, removeCuts } from "#db/write/cuts";
import { action } from "../action";
import { notTheOwner } from "../people/who";
import { cutIds, cutsOfRow } from "./cut-values";

/** Records what was cut of a row of the list. */
export const saveCut = action(cutsOfRow, recordCuts);

/** Takes the record of a row back. Whoever is not the owner takes back only what is their own. */
export const takeBackCut = action(cutIds, (database, ids) => removeCuts(database, ids, notTheOwner()));
