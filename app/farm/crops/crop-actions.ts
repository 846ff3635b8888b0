"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { addCrop, addVariety, removeCrop, removeVariety, updateCrop, updateVariety } from "#db/write/crops";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { readCrop, readVariety } from "./crop-values";

/** Adds a crop and opens it, or changes one. */
export async function saveCrop(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const cropId = values.hiddenNumber("cropId");
  const crop = readCrop(
    values,
    loadFarm().crops.find(({ id }) => id === cropId),
  );
  if (!crop.ok) return values.refused();
  if (values.text("cropId")) return taken(values, updateCrop(farmDatabase(), cropId, crop.parsed));
  const added = addCrop(farmDatabase(), crop.parsed);
  if (!added.ok) return values.refused(added.problems);
  revalidatePath("/", "layout");
  redirect(`/farm/crops/${added.result}`);
}

/** Gives a crop of the catalogue its built-in numbers back, each with its mark. Its curves, varieties and words stay. */
export async function restoreCrop(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const crop = loadFarm().crops.find(({ id }) => id === values.hiddenNumber("cropId"));
  const builtIn = CATALOGUE.find(({ name }) => name === crop?.name);
  if (!crop || !builtIn) return values.refused([{ place: "cropId", message: "this crop is not a built-in one" }]);
  const { id, ...draft } = crop;
  const { holdDays, fieldDays, bunchStems, bucketStems, buyInCents } = builtIn;
  return taken(
    values,
    updateCrop(farmDatabase(), id, { ...draft, holdDays, fieldDays, bunchStems, bucketStems, buyInCents }),
  );
}

/** Takes a crop off the farm, if nothing names it. */
export async function deleteCrop(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const removed = removeCrop(farmDatabase(), values.hiddenNumber("cropId"));
  if (!removed.ok) return values.refused(removed.problems);
  revalidatePath("/", "layout");
  redirect("/farm/crops");
}

/** Adds a variety to a crop, or changes one. */
export async function saveVariety(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const variety = readVariety(values);
  if (!variety.ok) return values.refused();
  const database = farmDatabase();
  return taken(
    values,
    values.text("varietyId")
      ? updateVariety(database, values.hiddenNumber("varietyId"), variety.parsed)
      : addVariety(database, variety.parsed),
  );
}

/** Takes a variety off the farm, if no planting and no stems in the cooler are of it. */
export async function deleteVariety(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  return taken(values, removeVariety(farmDatabase(), values.hiddenNumber("varietyId")));
}
