"use server";

import { updatePlanting } from "#db/write/plantings";
import { action, refusal } from "../../action";
import { readCount } from "./count-values";

/** Writes what came through a winter in the ground: the planting's own survival, which its next season is reckoned with. */
export const recordCount = action(
  (values, { plantings }) => {
    const planting = plantings.find(({ id }) => id === values.hiddenNumber("plantingId"));
    if (!planting) return refusal("plantingId", "this planting is no longer on the farm");
    const count = readCount(values, planting);
    return count.ok ? { ok: true, parsed: { planting, ...count.parsed } } : count;
  },
  (database, { planting: { id, ...draft }, liveCount }) =>
    updatePlanting(database, id, { ...draft, winterSurvivalShare: liveCount / draft.plantCount }),
);
