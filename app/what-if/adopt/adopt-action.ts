"use server";

import { z } from "zod";
import { revision } from "#db/journal/journal";
import { adoptWhatIf } from "#db/write/what-ifs";
import { adoption } from "#lib/plan/what-if/adoption";
import { action, refusal } from "../../action";
import { keptWhatIf } from "../kept-what-ifs";
import { ownCurve } from "./own-curve";

const id = z.coerce.number().int();

/** Writes to the farm what a what-if changes, as one change; refused when the farm is no longer the one that was shown. */
export const adopt = action(
  z.object({ whatIfId: id, revision: id }),
  (database, asked, farm) => {
    const whatIf = keptWhatIf(asked.whatIfId);
    if (!whatIf || asked.revision !== revision(database))
      return refusal("revision", "the farm was changed since this was shown: look through the list again");
    const toWrite = adoption(farm, whatIf.seasonYear, whatIf.changes);
    const changedCurves = toWrite.changedCurves.map((curve) =>
      ownCurve(
        curve,
        farm.curves.find(({ id }) => id === curve.id),
      ),
    );
    const adopted = adoptWhatIf(database, `adopted the what-if ${whatIf.name}`, { ...toWrite, changedCurves });
    return adopted.ok ? { ok: true, result: adopted.changeId } : adopted;
  },
  (changeId, { whatIfId }) => `/what-if/${whatIfId}?adopted=${changeId ?? ""}`,
);
