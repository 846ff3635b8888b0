import type { Crop, TRADE } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import type { Recipe } from "./records/recipe";

/** A built-in crop with its bloom curves: what a new farm starts from, each number with its origin. */
export type CatalogueCrop = Omit<Crop, "id"> & { readonly curves: readonly CatalogueCurve[] };

/** How the cut stems of a crop are stored, and what share wilts or breaks: said in one list for all, `catalogue/stores.ts`. */
export type StoreFigures = Pick<Crop, "stretchDays" | "dryHoldDays" | "holdUpToC" | "notColderC" | "cutSpareShare">;

/** A built-in crop without what is said in one list for all: how it is stored and cut, and when and in what colours it is to be had. */
export type BareCrop = Omit<TradedCrop, keyof typeof TRADE>;

/** A built-in crop without how it is stored and cut. */
export type TradedCrop = Omit<CatalogueCrop, keyof StoreFigures>;

/** A built-in bloom curve; it belongs to the crop that lists it. */
export type CatalogueCurve = Omit<BloomCurve, "id" | "cropId" | "varietyId" | "plantingId">;

/** A built-in recipe. */
export type CatalogueRecipe = Omit<Recipe, "id">;

/** A published source that an origin names by its id. */
export type Source = { readonly title: string; readonly publisher: string; readonly address: string };
