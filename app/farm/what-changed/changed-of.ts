import { type ChangedCrop, changedFigures } from "#lib/domain/built-in-figures";
import { type ChangedRecipe, changedRecipes } from "#lib/domain/built-in-recipes";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { DEFAULT_RECIPES } from "#lib/domain/catalogue/recipes";
import { allOf } from "#lib/domain/listed";
import type { Snapshot } from "#lib/domain/snapshot";
import { countOf } from "#lib/plan/words/numbers";

type Changed = { readonly crops: readonly ChangedCrop[]; readonly recipes: readonly ChangedRecipe[] };

/** All that is built in otherwise today than the farm has it. */
export const changedOf = (farm: Snapshot): Changed => ({
  crops: changedFigures(farm, CATALOGUE),
  recipes: changedRecipes(farm.recipes, DEFAULT_RECIPES),
});

/** "3 crops and 15 recipes"; empty when there are none. */
export const changedInWords = ({ crops, recipes }: Changed): string =>
  allOf([
    ...(crops.length > 0 ? [countOf(crops.length, "crop")] : []),
    ...(recipes.length > 0 ? [countOf(recipes.length, "recipe")] : []),
  ]);
