import { asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { recipe, recipeLine } from "#db/schema/bookings";
import { recipeLineRow } from "#db/schema/nested";
import type { Recipe } from "#lib/domain/records/recipe";
import { putLines } from "./put-lines";
import { addRow, changeRow } from "./put-row";
import { refuseTwice } from "./refusal";

/** A recipe before it has an id. */
export type RecipeDraft = Omit<Recipe, "id">;

/** Adds a recipe inside a change that is open, or replaces the one of the same name with its lines, and gives its id. */
export function putRecipeByName(database: FarmDatabase, draft: RecipeDraft): number {
  const kept = database.select({ id: recipe.id }).from(recipe).where(eq(recipe.name, draft.name)).get();
  if (kept) {
    replaceRecipe(database, kept.id, draft);
    return kept.id;
  }
  const id = addRow(database, recipe, draft);
  putRecipeLines(database, id, [], draft.lines);
  return id;
}

/** Makes the recipe with this id what `draft` says, lines and all. Refuses the name of another one. */
export function replaceRecipe(database: FarmDatabase, id: number, draft: RecipeDraft): void {
  refuseTwice("name", `a recipe called ${draft.name} is there already: choose another name`, () =>
    changeRow(database, recipe, id, draft),
  );
  const lines = database
    .select({ id: recipeLine.id })
    .from(recipeLine)
    .where(eq(recipeLine.recipeId, id))
    .orderBy(asc(recipeLine.position))
    .all();
  putRecipeLines(
    database,
    id,
    lines.map((line) => line.id),
    draft.lines,
  );
}

const putRecipeLines = (
  database: FarmDatabase,
  recipeId: number,
  ids: readonly number[],
  lines: Recipe["lines"],
): void =>
  putLines(
    database,
    recipeLine,
    ids,
    lines.map((line, position) => ({ ...recipeLineRow(line), recipeId, position })),
  );
