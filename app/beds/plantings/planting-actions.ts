"use server";

import { z } from "zod";
import { addPlanting, removePlanting, setTreatment, updatePlanting } from "#db/write/plantings";
import type { Written } from "#db/write/write";
import { replantedOn } from "#lib/plan/road/grown";
import { DUG, KEPT } from "#lib/plan/winter/beds";
import { action, idIn, readEntry, refusal } from "../../action";
import { doubtsOf } from "./doubts";
import { MEANT } from "./meant";
import { readPlanting } from "./planting-values";

/** How to save what the tool doubts. */
const STILL_SAVE = { place: MEANT, message: "or tick here, and save it as it stands" };

/** Adds a planting, or changes one; a new variety is added to its crop with it, as one change. */
export const savePlanting = action(
  (values, snapshot) =>
    readEntry(values, "plantingId", snapshot.plantings, (before) => {
      const read = readPlanting(values, snapshot.farm, before);
      const doubts = read.ok && !values.isTicked(MEANT) ? doubtsOf(read.parsed, before, snapshot) : [];
      return doubts.length > 0 ? { ok: false, problems: [...doubts, STILL_SAVE] } : read;
    }),
  (database, { id, draft: { planting, newVariety } }) =>
    id === null ? addPlanting(database, planting, newVariety) : updatePlanting(database, id, planting, newVariety),
);

/** Takes a planting out of its bed. */
export const deletePlanting = action(idIn("plantingId"), removePlanting);

/** Keeps a planting in the ground, or digs it. Dug, what has stood since an earlier year goes back in on that day of the season's year. */
export const keepOrDig = action(
  z.object({ plantingId: z.coerce.number().int(), treatment: z.enum([DUG, KEPT]) }),
  (database, { plantingId, treatment }, { plantings }): Written<unknown> => {
    const planting = plantings.find(({ id }) => id === plantingId);
    if (!planting) return refusal("plantingId", "this planting is no longer on the farm");
    const { id, ...draft } = planting;
    const plantedOn = treatment === DUG ? replantedOn(planting) : planting.plantedOn;
    return plantedOn === planting.plantedOn
      ? setTreatment(database, [id], treatment)
      : updatePlanting(database, id, { ...draft, treatment, plantedOn });
  },
);
