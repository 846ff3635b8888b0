"use server";

import { z } from "zod";
import { revision } from "#db/journal/journal";
import { adoptWhatIf } from "#db/write/what-ifs";
import { adoption } from "#lib/plan/what-if/adoption";
import { winterOverInWords } from "#lib/plan/words/season-lead";
import { action, refusal } from "../../action";
import { today } from "../../clock";
import { keptWhatIf } from "../kept-what-ifs";
import { isOfWinterOver } from "./winter-over";

const id = z.coerce.number().int();

/** Writes to the farm what a what-if changes, as one change; refused when the farm is no longer the one that was shown, or its winter is over [K11]. */
export const adopt = action(
  z.object({ whatIfId: id, revision: id }),
  (database, asked, farm) => {
    const whatIf = keptWhatIf(asked.whatIfId);
    if (!whatIf || asked.revision !== revision(database))
      return refusal("revision", "the farm was changed since this was shown: look through the list again");
    const toWrite = adoption(farm, whatIf.seasonYear, whatIf.changes, today());
    if (isOfWinterOver(toWrite, farm, whatIf.seasonYear, today()))
      return refusal("whatIfId", winterOverInWords(whatIf.seasonYear));
    const adopted = adoptWhatIf(database, `adopted the what-if ${whatIf.name}`, toWrite);
    return adopted.ok ? { ok: true, result: adopted.changeId } : adopted;
  },
  (changeId, { whatIfId }) => `/what-if/${whatIfId}?adopted=${changeId ?? ""}`,
);
