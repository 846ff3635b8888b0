import { stemsAskedFor, tooManyStems } from "#lib/domain/booking-stems";
import type { Problem } from "#lib/domain/problem";
import type { BookingDraft } from "#lib/domain/records/booking";
import { ById } from "#lib/domain/snapshot";
import { loadFarm } from "../../load";

/** What keeps a draft from being planned: recipes and crops that the farm does not have (any more), or more stems than a plan can reckon with. */
export function unknownChoices(draft: BookingDraft): Problem[] {
  const farm = loadFarm();
  const recipes = new ById("recipe", farm.recipes);
  const crops = new Set(farm.crops.map(({ id }) => id));
  const unknown = [
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
  if (unknown.length) return unknown;
  const message = tooManyStems(stemsAskedFor(draft, (id) => recipes.get(id).lines));
  return message ? [{ place: "", message: `this booking ${message}` }] : [];
}
