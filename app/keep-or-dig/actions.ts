"use server";

import { adoptWhatIf, putWhatIf } from "#db/write/what-ifs";
import type { Parsed } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { whatIfSchema } from "#lib/domain/what-if";
import { winterBeds } from "#lib/plan/winter/beds";
import { keepingTime } from "#lib/plan/winter/keeping-time";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import { keptBedsInWords } from "#lib/plan/words/adoption-words";
import { winterOverInWords } from "#lib/plan/words/season-lead";
import { action } from "../action";
import { today } from "../clock";
import type { FormValues } from "../ui/form-values";
import { type AskedBeds, askedBeds, refusalOf } from "./asked-beds";
import { changesTo } from "./changes-to";

const NOTHING = { changed: [], removedIds: [], added: [] };

/** The beds that a form carries, when all of them may be kept. */
function readBeds(values: FormValues, farm: Snapshot): Parsed<AskedBeds> {
  const asked = values.parse(askedBeds, {
    seasonYear: values.hiddenNumber("seasonYear"),
    keptBedIds: values.text("keptBedIds").split(",").filter(Boolean).map(Number),
  });
  const problem = asked.ok ? refusalOf(farm, asked.parsed) : null;
  if (problem === null) return asked;
  values.refuse("keptBedIds", problem);
  return values.refusal();
}

/** The same for a winter that is not over [K11]. */
function readWinter(values: FormValues, farm: Snapshot): Parsed<AskedBeds> {
  const beds = readBeds(values, farm);
  if (!beds.ok) return beds;
  const { seasonYear } = beds.parsed;
  if (keepingTime(farm, winterBeds(farm, seasonYear), seasonYear, today()) !== "over") return beds;
  values.refuse("keptBedIds", winterOverInWords(seasonYear));
  return values.refusal();
}

/** Keeps these beds and digs every other candidate: one change, which can be undone. A winter that is over is refused. */
export const adoptBeds = action(readWinter, (database, { seasonYear, keptBedIds }, farm) =>
  adoptWhatIf(database, keptBedsInWords(farm, keptBedIds), {
    farm: null,
    plantings: { ...NOTHING, changed: plantingsToChange(farm, seasonYear, keptBedIds) },
    bookings: NOTHING,
  }),
);

/** Keeps these beds under a name, beside the farm as it stands. */
export const saveAsWhatIf = action(
  (values, farm) => {
    const beds = readBeds(values, farm);
    const name = values.parse(whatIfSchema.shape.name, values.text("name"), "name");
    return beds.ok && name.ok ? { ok: true, parsed: { ...beds.parsed, name: name.parsed } } : values.refusal();
  },
  (database, { name, ...beds }, farm) =>
    putWhatIf(database, { name, seasonYear: beds.seasonYear, changes: changesTo(farm, beds) }),
);
