import type { Crop } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import type { Recipe } from "./records/recipe";

/** A built-in crop with its bloom curves: what a new farm starts from, each number with its origin. */
export type CatalogueCrop = Omit<Crop, "id"> & { readonly curves: readonly CatalogueCurve[] };

/** A built-in bloom curve; it belongs to the crop that lists it. */
export type CatalogueCurve = Omit<BloomCurve, "id" | "cropId" | "varietyId" | "plantingId">;

/** A built-in recipe. */
export type CatalogueRecipe = Omit<Recipe, "id">;

/** A published source that an origin names by its id. */
export type Source = { readonly title: string; readonly publisher: string; readonly address: string };
