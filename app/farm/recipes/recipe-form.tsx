import type { Farm } from "#lib/domain/records/farm-settings";
import { formFields } from "#lib/domain/records/form";
import { RECIPE, type Recipe } from "#lib/domain/records/recipe";
import { Form } from "../../ui/form.client";
import { RecordField } from "../../ui/record-field";
import { saveRecipe } from "./recipe-actions";
import { RecipeLines } from "./recipe-lines.client";

/** A recipe, to add (no `recipe`) or to change. */
export function RecipeForm({ recipe, farm }: { recipe?: Recipe; farm: Farm }) {
  const { name, unit } = formFields(RECIPE, recipe ?? { unit: "piece" }, farm);
  return (
    <Form
      action={saveRecipe}
      submit={recipe ? "Save the recipe" : "Add the recipe"}
      hidden={{ recipeId: recipe?.id ?? "" }}
      label={recipe?.name ?? "A new recipe"}
    >
      <div className="fields">
        <RecordField {...name} />
        <RecordField {...unit} />
      </div>
      <RecipeLines
        mark={farm.decimalMark}
        key={JSON.stringify(recipe?.lines)}
        lines={recipe?.lines ?? [{ role: "focal", stemsPerPiece: 1, colours: "palette", asks: [] }]}
      />
    </Form>
  );
}
