import { eq } from "drizzle-orm";
import type { FarmDatabase } from "#db/client";
import { recipe } from "#db/schema/bookings";
import { known, refuseWhileNamed } from "./known";
import { putRecipeByName, type RecipeDraft, replaceRecipe } from "./put-recipes";
import { refuseOverfull } from "./refusal";
import { type Written, write } from "./write";

/**
 * Puts a recipe into the records and gives its id. With an id it replaces that recipe, which may get a new name; without, it replaces the one
 * of the same name or is added. Refused when another has its name, the id is not there, or a booking would have more stems than a plan can reckon with.
 */
export const putRecipe = (database: FarmDatabase, { id, ...draft }: RecipeDraft & { readonly id?: number }): Written =>
  write(database, () => {
    const title = `set the recipe ${draft.name}`;
    if (id !== undefined) {
      known(database, "recipe", id);
      replaceRecipe(database, id, draft);
    }
    const result = id ?? putRecipeByName(database, draft);
    refuseOverfull(database);
    return { title, result };
  });

/** Removes a recipe. Refused while a booking or a standing order asks for it. */
export const removeRecipe = (database: FarmDatabase, id: number): Written =>
  write(database, () => {
    const name = known(database, "recipe", id);
    refuseWhileNamed(database, name, id, [
      { table: "booking_piece", column: "recipe_id", one: "line of a booking", many: "lines of bookings" },
      { table: "standing_order", column: "recipe_id", one: "standing order", many: "standing orders" },
    ]);
    database.delete(recipe).where(eq(recipe.id, id)).run();
    return { title: `removed the recipe ${name}`, result: id };
  });
