"use server";

import { addCurves } from "#db/write/crops";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { addedCurve, missingCurves } from "#lib/domain/missing-curves";
import { action, refusal } from "../../action";

/** Adds the built-in bloom curves that the farm lacks: those of one crop, or all of them. */
export const addMissingCurves = action(
  (values, farm) => {
    const asked = values.text("of");
    const missing = missingCurves(farm, CATALOGUE).filter(({ crop }) => asked === "all" || asked === String(crop.id));
    return missing.length === 0
      ? refusal("of", "these curves are on the farm already: look at the page again")
      : { ok: true, parsed: missing.map(addedCurve) };
  },
  (database, drafts) => addCurves(database, drafts),
);
