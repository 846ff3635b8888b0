"use server";

import { putWhatIf, removeWhatIf } from "#db/write/what-ifs";
import { action, idIn, refusal } from "../action";
import { GONE, keptWhatIf } from "./kept-what-ifs";
import { readName, readNewWhatIf } from "./what-if-values";

/** Makes a what-if and opens it, empty or with the changes of another. */
export const makeWhatIf = action(
  readNewWhatIf,
  (database, { name, seasonYear, fromId }) => {
    const from = fromId === null ? undefined : keptWhatIf(fromId);
    return fromId !== null && !from
      ? refusal("fromId", "this one is gone: choose another")
      : putWhatIf(database, { name, seasonYear, changes: from?.changes ?? [] });
  },
  (whatIfId) => `/what-if/${whatIfId}`,
);

/** Gives a what-if another name. */
export const renameWhatIf = action(readName, (database, { whatIfId, name }) => {
  const whatIf = keptWhatIf(whatIfId);
  return whatIf ? putWhatIf(database, { ...whatIf, name }) : GONE;
});

/** Removes a what-if; the undo on the next page brings it back. The farm was never touched by it. */
export const deleteWhatIf = action(idIn("whatIfId"), removeWhatIf, () => "/what-if");
