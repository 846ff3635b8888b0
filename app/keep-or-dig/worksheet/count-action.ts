"use server";

import { recordLoss } from "#db/write/losses";
import { action, refusal } from "../../action";
import { today } from "../../clock";
import { readCount } from "./count-values";

/** Writes down what came through a winter in the ground: this season is forecast with it, and the year's end learns from it. */
export const recordCount = action(
  (values, { plantings }) => {
    const planting = plantings.find(({ id }) => id === values.hiddenNumber("plantingId"));
    if (!planting) return refusal("plantingId", "this planting is no longer on the farm");
    const count = readCount(values, planting);
    return count.ok ? { ok: true, parsed: { planting, ...count.parsed } } : count;
  },
  (database, { planting: { bedId, varietyId, plantCount }, liveCount }) =>
    recordLoss(database, {
      ...{ bedId, varietyId, seenOn: today() },
      ...{ cause: "winter in the ground", plantsBefore: plantCount, plantsLeft: liveCount },
    }),
);
