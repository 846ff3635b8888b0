"use server";

import { setFigure } from "#db/write/farm";
import { recordFrost, removeFrost } from "#db/write/frosts";
import { yearOf } from "#lib/domain/day";
import { daySchema } from "#lib/domain/day-schema";
import { COLD_NIGHT } from "#lib/domain/records/farm-settings";
import { KILLING_FROSTS } from "#lib/domain/records/killing-frosts";
import { coldNightTitle } from "#lib/plan/words/frost-words";
import { action, refusal } from "../action";
import { today } from "../clock";

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

/** Writes down that a frost ended the season's tender crops. */
export const noteFrost = action((values) => {
  const read = values.parse(daySchema, values.text("frostOn"), "frostOn");
  if (!read.ok) return read;
  const [wrong] = KILLING_FROSTS.killingFrosts.schema.safeParse([read.parsed]).error?.issues ?? [];
  if (wrong) values.refuse("frostOn", wrong.message);
  else if (read.parsed > today())
    values.refuse("frostOn", "this day is still to come: the forecast of a cold night stands above");
  else return read;
  return values.refusal();
}, recordFrost);

/** Takes the killing frost of this year back. */
export const takeBackFrost = action(
  () => ({ ok: true, parsed: yearOf(today()) }),
  (database, year) => removeFrost(database, year),
);
