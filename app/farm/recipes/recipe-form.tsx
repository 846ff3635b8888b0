import type { Recipe } from "#lib/domain/booking";
import { Form } from "../../ui/form.client";
import { TextField } from "../../ui/form-fields.client";
import { saveRecipe } from "./recipe-actions";
import { RecipeLines } from "./recipe-lines.client";

/** A recipe, to add (no `recipe`) or to change. */
export const RecipeForm = ({ recipe }: { recipe?: Recipe }) => (
  <Form
    action={saveRecipe}
    submit={recipe ? "Save the recipe" : "Add the recipe"}
    hidden={{ recipeId: recipe?.id ?? "" }}
    label={recipe?.name ?? "A new recipe"}
  >
    <div className="fields">
      <TextField name="name" label="Name" value={recipe?.name} />
      <TextField
        name="unit"
        label="One of it is a"
        value={recipe?.unit ?? "piece"}
        hint="A piece, or a foot of garland."
      />
    </div>
    <RecipeLines
      key={JSON.stringify(recipe?.lines)}
      lines={recipe?.lines ?? [{ role: "focal", stemsPerPiece: 1, colours: "palette" }]}
    />
  </Form>
);
