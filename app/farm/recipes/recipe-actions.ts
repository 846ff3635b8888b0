"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { putRecipe, removeRecipe } from "#db/write/recipes";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { readRecipe } from "./recipe-values";

/** Adds a recipe, or changes one. A new one may not have the name of another: it would replace it. */
export async function saveRecipe(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const { recipes } = loadFarm();
  const recipeId = values.hiddenNumber("recipeId");
  const before = recipes.find(({ id }) => id === recipeId);
  const recipe = readRecipe(values, before);
  if (!recipe.ok) return values.refused();
  if (values.text("recipeId")) return taken(values, putRecipe(farmDatabase(), { ...recipe.parsed, id: recipeId }));
  const { name } = recipe.parsed;
  if (recipes.some((other) => other.name === name))
    return values.refused([
      { place: "name", message: `a recipe called ${name} is there already: choose another name` },
    ]);
  const added = putRecipe(farmDatabase(), recipe.parsed);
  if (!added.ok) return values.refused(added.problems);
  revalidatePath("/", "layout");
  redirect("/farm/recipes");
}

/** Takes a recipe off the farm, if no booking asks for it. */
export async function deleteRecipe(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const removed = removeRecipe(farmDatabase(), values.hiddenNumber("recipeId"));
  if (!removed.ok) return values.refused(removed.problems);
  revalidatePath("/", "layout");
  redirect("/farm/recipes");
}
