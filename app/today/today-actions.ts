"use server";

import { recordCuts, removeCuts } from "#db/write/cuts";
import { action } from "../action";
import { cutIds, cutsOfRow } from "./cut-values";

/** Records what was cut of a row of the list. */
export const saveCut = action(cutsOfRow, recordCuts);

/** Takes the record of a row back. */
export const takeBackCut = action(cutIds, removeCuts);
