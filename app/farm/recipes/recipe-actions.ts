"use server";

import { putRecipe, removeRecipe } from "#db/write/recipes";
import { action, idIn, readEntry, refusal } from "../../action";
import { readRecipe } from "./recipe-values";

/** Adds a recipe, or changes one. A new one may not have the name of another: it would replace it. */
export const saveRecipe = action(
  (values, { farm, recipes }) => readEntry(values, "recipeId", recipes, (before) => readRecipe(values, farm, before)),
  (database, { id, draft }, { recipes }) => {
    if (id !== null) return putRecipe(database, { ...draft, id });
    return recipes.some(({ name }) => name === draft.name)
      ? refusal("name", `a recipe called ${draft.name} is there already: choose another name`)
      : putRecipe(database, draft);
  },
  (_, { id }) => (id === null ? "/farm/recipes" : null),
);

/** Takes a recipe off the farm, if no booking asks for it. */
export const deleteRecipe = action(idIn("recipeId"), removeRecipe, () => "/farm/recipes");
