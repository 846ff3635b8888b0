"use server";

import { updatePlanting } from "#db/write/plantings";
import { adoptWhatIf, putWhatIf } from "#db/write/what-ifs";
import { whatIfSchema } from "#lib/domain/what-if";
import { plantingsToChange } from "#lib/plan/words/keep-board";
import { farmDatabase, loadFarm } from "../load";
import type { FormState } from "../ui/form-state";
import { taken } from "../ui/form-taken";
import { FormValues } from "../ui/form-values";
import { adoptedName, changesTo } from "./adopted-name";
import { askedBeds, refusalOf } from "./asked-beds";
import { readCount } from "./worksheet/count-values";

const NOTHING = { changed: [], removedIds: [], added: [] };

/** The beds that a form carries, or null once what is wrong with them was noted. */
function readBeds(values: FormValues) {
  const asked = values.parse(askedBeds, {
    seasonYear: values.hiddenNumber("seasonYear"),
    keptBedIds: values.text("keptBedIds").split(",").filter(Boolean).map(Number),
  });
  const problem = asked.ok ? refusalOf(loadFarm(), asked.parsed) : null;
  if (problem) values.refuse("keptBedIds", problem);
  return asked.ok && problem === null ? asked.parsed : null;
}

/** Keeps these beds and digs every other candidate: one change, which can be undone. */
export async function adoptBeds(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const beds = readBeds(values);
  if (!beds) return values.refused();
  const farm = loadFarm();
  const changed = plantingsToChange(farm, beds.seasonYear, beds.keptBedIds);
  return taken(
    values,
    adoptWhatIf(farmDatabase(), adoptedName(farm, beds.keptBedIds), {
      farm: null,
      plantings: { ...NOTHING, changed },
      bookings: NOTHING,
      changedCurves: [],
    }),
  );
}

/** Keeps these beds under a name, beside the farm as it stands. */
export async function saveAsWhatIf(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const beds = readBeds(values);
  const name = values.parse(whatIfSchema.pick({ name: true }), { name: values.text("name") });
  if (!beds || !name.ok) return values.refused();
  const changes = changesTo(loadFarm(), beds);
  return taken(values, putWhatIf(farmDatabase(), { ...name.parsed, seasonYear: beds.seasonYear, changes }));
}

/** Writes what came through a winter in the ground: the planting's own survival, which its next season is reckoned with. */
export async function recordCount(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const plantingId = values.hiddenNumber("plantingId");
  const planting = loadFarm().plantings.find(({ id }) => id === plantingId);
  if (!planting) return values.refused([{ place: "plantingId", message: "this planting is no longer on the farm" }]);
  const count = readCount(values, planting);
  if (!count.ok) return values.refused();
  const { id, ...draft } = planting;
  const winterSurvivalShare = count.parsed.liveCount / planting.plantCount;
  return taken(values, updatePlanting(farmDatabase(), id, { ...draft, winterSurvivalShare }));
}
