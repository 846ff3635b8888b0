"use server";

import { removeCuts } from "#db/write/cuts";
import { action } from "../action";
import { notTheOwner } from "../people/who";
import { correct } from "./correct-row";
import { correctedRow, cutIds, settledTally, tallyOfRow } from "./cut-values";
import { settle, takeTally } from "./take-tally";

/** Takes what was counted of a row of the list, from a browser without scripts; others send it by the route beside. */
export const saveCut = action(tallyOfRow, takeTally);

/** Takes the record of a row back. Whoever is not the owner takes back, corrects and settles only what is their own. */
export const takeBackCut = action(cutIds, (database, ids) => removeCuts(database, ids, notTheOwner()));

/** Makes the record of a row what somebody says it is. */
export const correctCut = action(correctedRow, (database, row, farm) => correct(database, row, farm, notTheOwner()));

/** Adds a count that came after a correction, or leaves it out. */
export const settleCount = action(settledTally, (database, settled, farm) =>
  settle(database, settled, farm, notTheOwner()),
);
