import type { CatalogueRecipe } from "./catalogue-types";
import type { Recipe } from "./records/recipe";

/** A recipe of the farm that came with the tool and stands otherwise in its list today. */
export type ChangedRecipe = { readonly was: Recipe; readonly is: CatalogueRecipe };

/** What a recipe is marked with that is the grower's, made or changed by her. */
const OWN_RECIPE = "own";

/** Where the built-in recipes ask for something else than the farm's. A recipe is known by its name; one that she changed is hers and never among them. */
export function changedRecipes(recipes: readonly Recipe[], builtIn: readonly CatalogueRecipe[]): ChangedRecipe[] {
  const byName = new Map(builtIn.map((recipe) => [recipe.name, recipe]));
  return recipes.flatMap((was) => {
    const is = byName.get(was.name);
    return !is || was.origin === OWN_RECIPE || isSame(was, is) ? [] : [{ was, is }];
  });
}

/** The farm's recipes with the built-in lines in place of their own. */
export const takenRecipes = (changed: readonly ChangedRecipe[]): Recipe[] =>
  changed.map(({ was, is }) => ({ ...is, id: was.id, lines: [...is.lines] }));

/** The farm's recipes as they are, marked as the grower's own, so that no later version offers to change them. */
export const keptRecipes = (changed: readonly ChangedRecipe[]): Recipe[] =>
  changed.map(({ was }) => ({ ...was, origin: OWN_RECIPE }));

const isSame = (a: CatalogueRecipe, b: CatalogueRecipe): boolean => a.unit === b.unit && linesOf(a) === linesOf(b);

const linesOf = ({ lines }: CatalogueRecipe): string =>
  JSON.stringify(lines.map(({ role, stemsPerPiece, colours, asks }) => [role, stemsPerPiece, colours, asks]));
