import type { Metadata } from "next";
import { loadFarm } from "../../../load";
import { RecipeForm } from "../recipe-form";

export const metadata: Metadata = { title: "New recipe" };

/** A recipe of the farm's own. */
export default function NewRecipePage() {
  return (
    <>
      <p className="crumb">
        <a href="/farm/recipes">Recipes</a>
      </p>
      <h1>New recipe</h1>
      <RecipeForm farm={loadFarm().farm} />
    </>
  );
}
