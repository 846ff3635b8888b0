import type { Parsed } from "#lib/domain/problem";
import type { Recipe } from "#lib/domain/records/recipe";
import type { Snapshot } from "#lib/domain/snapshot";
import { recipeWith, reviewAdvice } from "#lib/plan/learning/review/advice";
import type { FormValues } from "../../ui/form-values";

const GONE = "this is not suggested any more: the page shows what is";

/** The recipe as it is suggested now, if it is still the number that the page showed. */
export function suggestedRecipe(values: FormValues, farm: Snapshot): Parsed<Recipe> {
  const advice = reviewAdvice(farm, values.hiddenNumber("seasonYear")).recipes.find(
    ({ recipe, role, suggested }) =>
      recipe.id === values.hiddenNumber("recipeId") &&
      role === values.text("role") &&
      suggested === values.hiddenNumber("suggested"),
  );
  return advice ? { ok: true, parsed: { ...recipeWith(advice), origin: "own" } } : refused(values);
}

/** The spare as it is suggested now, if it is still the number that the page showed. */
export function suggestedSpare(values: FormValues, farm: Snapshot): Parsed<number> {
  const { spare } = reviewAdvice(farm, values.hiddenNumber("seasonYear"));
  const isShown = spare !== null && spare.suggested === values.hiddenNumber("suggested");
  return isShown ? { ok: true, parsed: spare.suggested } : refused(values);
}

function refused(values: FormValues) {
  values.refuse("", GONE);
  return values.refusal();
}
