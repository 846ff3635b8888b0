import type { Problem } from "#lib/domain/problem";
import type { BookingDraft } from "#lib/domain/records/booking";
import { loadFarm } from "../../load";

/** Recipes and crops that a draft names and the farm does not have (any more). */
export function unknownChoices(draft: BookingDraft): Problem[] {
  const farm = loadFarm();
  const recipes = new Set(farm.recipes.map(({ id }) => id));
  const crops = new Set(farm.crops.map(({ id }) => id));
  return [
    ...draft.pieces.flatMap(({ recipeId }, index) =>
      recipes.has(recipeId)
        ? []
        : [{ place: `pieces[${index}].recipeId`, message: "this recipe is gone: choose another" }],
    ),
    ...draft.stemLines.flatMap(({ cropId }, index) =>
      cropId === null || crops.has(cropId)
        ? []
        : [{ place: `stemLines[${index}].cropId`, message: "this crop is gone: choose another" }],
    ),
  ];
}
