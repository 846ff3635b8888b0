import { asc, eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { booking, recipe, recipeLine } from "#db/schema/bookings";
import { recipeLineRow } from "#db/schema/nested";
import { FINAL_COUNT } from "#lib/domain/records/final-count";
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
  const was = database.select({ name: recipe.name }).from(recipe).where(eq(recipe.id, id)).get();
  refuseTwice("name", `a recipe called ${draft.name} is there already: choose another name`, () =>
    changeRow(database, recipe, id, draft),
  );
  if (was && was.name !== draft.name) renameInFinalCounts(database, was.name, draft.name);
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

/** Final counts name their pieces as the recipe was called: they go along with its new name. */
function renameInFinalCounts(database: FarmDatabase, was: string, name: string): void {
  const rows = database.select({ id: booking.id, finalPieces: booking.finalPieces }).from(booking).all();
  for (const { id, finalPieces } of rows) {
    const counts = BOOKING_COUNTS.safeParse(finalPieces);
    if (!counts.success || counts.data.every(({ what }) => what !== was)) continue;
    const renamed = counts.data.map((piece) => (piece.what === was ? { ...piece, what: name } : piece));
    database.update(booking).set({ finalPieces: renamed }).where(eq(booking.id, id)).run();
  }
}

const BOOKING_COUNTS = FINAL_COUNT.finalPieces.schema;

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
