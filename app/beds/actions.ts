"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addBed, removeBed, updateBed } from "#db/write/beds";
import { carryPlantings } from "#db/write/plantings";
import { carriedPlantings } from "#lib/plan/winter/carried-plantings";
import { farmDatabase, loadFarm } from "../load";
import type { FormState } from "../ui/form-state";
import { taken } from "../ui/form-taken";
import { FormValues } from "../ui/form-values";
import { readBed } from "./bed-values";
import { readCarryOver } from "./carry-over-values";

/** Adds a bed and opens it, or changes one. */
export async function saveBed(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const { farm, beds } = loadFarm();
  const bedId = values.hiddenNumber("bedId");
  const bed = readBed(
    values,
    farm.units,
    beds.find(({ id }) => id === bedId),
  );
  if (!bed.ok) return values.refused();
  if (values.text("bedId")) return taken(values, updateBed(farmDatabase(), bedId, bed.parsed));
  const added = addBed(farmDatabase(), bed.parsed);
  if (!added.ok) return values.refused(added.problems);
  revalidatePath("/", "layout");
  redirect(`/beds/${added.result}`);
}

/** Removes a bed with its plantings of every season; the undo on the next page brings all of it back. */
export async function deleteBed(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const removed = removeBed(farmDatabase(), values.hiddenNumber("bedId"));
  if (!removed.ok) return values.refused(removed.problems);
  revalidatePath("/", "layout");
  redirect("/beds");
}

/** Copies the plantings of one season into another. */
export async function carryOver(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const seasons = readCarryOver(values);
  if (!seasons.ok) return values.refused();
  const { fromSeason, toSeason } = seasons.parsed;
  const plantings = carriedPlantings(loadFarm(), fromSeason, toSeason);
  if (plantings.length === 0)
    return values.refused([{ place: "fromSeason", message: `nothing of ${fromSeason} is missing in ${toSeason}` }]);
  return taken(values, carryPlantings(farmDatabase(), fromSeason, toSeason, plantings));
}
