import { asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { recipe, recipeLine } from "#db/schema/bookings";
import type { Recipe } from "#lib/domain/booking";
import { addRow } from "./add-row";
import { putLines } from "./put-lines";
import { refuseTwice } from "./refusal";
import { recipeColumns, recipeLineColumns } from "./to-columns";

/** A recipe before it has an id. */
export type RecipeDraft = Omit<Recipe, "id">;

/** Adds a recipe inside a change that is open, or replaces the one of the same name with its lines, and gives its id. */
export function putRecipeByName(database: FarmDatabase, draft: RecipeDraft): number {
  const kept = database.select({ id: recipe.id }).from(recipe).where(eq(recipe.name, draft.name)).get();
  if (kept) {
    replaceRecipe(database, kept.id, draft);
    return kept.id;
  }
  const id = addRow(database, recipe, recipeColumns(draft));
  putRecipeLines(database, id, [], draft.lines);
  return id;
}

/** Makes the recipe with this id what `draft` says, lines and all. Refuses the name of another one. */
export function replaceRecipe(database: FarmDatabase, id: number, draft: RecipeDraft): void {
  refuseTwice("name", `a recipe called ${draft.name} is there already: choose another name`, () =>
    database.update(recipe).set(recipeColumns(draft)).where(eq(recipe.id, id)).run(),
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

function putRecipeLines(
  database: FarmDatabase,
  recipeId: number,
  ids: readonly number[],
  lines: Recipe["lines"],
): void {
  putLines(ids, lines, {
    change: (id, line, position) =>
      database
        .update(recipeLine)
        .set({ ...recipeLineColumns(line), position })
        .where(eq(recipeLine.id, id))
        .run(),
    add: (line, position) => addRow(database, recipeLine, { ...recipeLineColumns(line), recipeId, position }),
    remove: (id) => database.delete(recipeLine).where(eq(recipeLine.id, id)).run(),
  });
}
