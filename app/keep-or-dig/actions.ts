"use server";

import { adoptWhatIf, putWhatIf } from "#db/write/what-ifs";
import type { Parsed } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { whatIfSchema } from "#lib/domain/what-if";
import { plantingsToChange } from "#lib/plan/winter/kept-beds";
import { action } from "../action";
import type { FormValues } from "../ui/form-values";
import { adoptedName, changesTo } from "./adopted-name";
import { type AskedBeds, askedBeds, refusalOf } from "./asked-beds";

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

/** Keeps these beds and digs every other candidate: one change, which can be undone. */
export const adoptBeds = action(readBeds, (database, { seasonYear, keptBedIds }, farm) =>
  adoptWhatIf(database, adoptedName(farm, keptBedIds), {
    farm: null,
    plantings: { ...NOTHING, changed: plantingsToChange(farm, seasonYear, keptBedIds) },
    bookings: NOTHING,
    changedCurves: [],
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
