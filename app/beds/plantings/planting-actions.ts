"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { addPlanting, removePlanting, setTreatment, updatePlanting } from "#db/write/plantings";
import { DUG, KEPT, replantedOn } from "#lib/plan/winter/beds";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { readPlanting } from "./planting-values";

/** Adds a planting, or changes one; a new variety is added to its crop with it, as one change. */
export async function savePlanting(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const plantingId = values.hiddenNumber("plantingId");
  const read = readPlanting(
    values,
    loadFarm().plantings.find(({ id }) => id === plantingId),
  );
  if (!read) return values.refused();
  const database = farmDatabase();
  const { planting, newVariety } = read;
  return taken(
    values,
    values.text("plantingId")
      ? updatePlanting(database, plantingId, planting, newVariety ?? undefined)
      : addPlanting(database, planting, newVariety ?? undefined),
  );
}

/** Takes a planting out of its bed. */
export async function deletePlanting(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  return taken(values, removePlanting(farmDatabase(), values.hiddenNumber("plantingId")));
}

const switchForm = z.object({ plantingId: z.coerce.number().int(), treatment: z.enum([DUG, KEPT]) });

/** Keeps a planting in the ground, or digs it. Dug, what has stood since an earlier year goes back in on that day of the season's year. */
export async function keepOrDig(form: FormData): Promise<void> {
  const parsed = switchForm.safeParse(Object.fromEntries(form));
  const planting = loadFarm().plantings.find(({ id }) => id === parsed.data?.plantingId);
  if (!parsed.success || !planting) return;
  const { treatment } = parsed.data;
  const { id, ...draft } = planting;
  const plantedOn = treatment === DUG ? replantedOn(planting) : planting.plantedOn;
  if (plantedOn === planting.plantedOn) setTreatment(farmDatabase(), [id], treatment);
  else updatePlanting(farmDatabase(), id, { ...draft, treatment, plantedOn });
  revalidatePath("/", "layout");
}
