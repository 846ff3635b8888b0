"use server";

import { setFigure } from "#db/write/farm";
import { COLD_NIGHT } from "#lib/domain/records/farm-settings";
import { coldNightTitle } from "#lib/plan/words/frost-words";
import { action, refusal } from "../action";

/** Keeps what is forecast of the next cold night; both fields empty take it out, where one is kept. */
export const saveColdNight = action(
  (values, { farm }) => {
    const read = values.record(COLD_NIGHT, farm, { before: farm });
    if (!read.ok) return read;
    const { coldNightOn, coldNightLowC } = read.parsed;
    if ((coldNightOn === null) !== (coldNightLowC === null))
      return refusal(
        coldNightOn === null ? "coldNightOn" : "coldNightLowC",
        "write both the morning and its low, or neither",
      );
    if (coldNightOn === null && farm.coldNightOn === null) {
      values.refuse("coldNightOn", "write the morning that is forecast cold");
      values.refuse("coldNightLowC", "write its forecast low");
      return values.refusal();
    }
    return { ok: true, parsed: { ...farm, coldNightOn, coldNightLowC } };
  },
  (database, farm) => setFigure(database, farm, coldNightTitle(farm)),
);
