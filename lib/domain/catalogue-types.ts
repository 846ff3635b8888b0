import type { Crop, TRADE } from "./records/crop";
import type { BloomCurve } from "./records/curve";
import type { Recipe } from "./records/recipe";
import type { STEM_TRAITS } from "./records/stem-traits";

/** A built-in crop with its bloom curves: what a new farm starts from, each number with its origin. */
export type CatalogueCrop = Omit<Crop, "id"> & { readonly curves: readonly CatalogueCurve[] };

/** How the cut stems of a crop are stored, and what share wilts or breaks: said in one list for all, `catalogue/stores.ts`. */
export type StoreFigures = Pick<Crop, "stretchDays" | "dryHoldDays" | "holdUpToC" | "notColderC" | "cutSpareShare">;

/** A built-in crop without what is said in one list for all: how it is stored and cut, what its stems are like, and when and in what colours it is to be had. */
export type BareCrop = Omit<TradedCrop, keyof typeof TRADE>;

/** A built-in crop without how it is stored and cut. */
export type TradedCrop = Omit<TraitlessCrop, keyof StoreFigures>;

/** A built-in crop without what its stems are like. */
export type TraitlessCrop = Omit<CatalogueCrop, keyof typeof STEM_TRAITS | "traitsOrigin">;

/** A built-in bloom curve; it belongs to the crop that lists it. */
export type CatalogueCurve = Omit<BloomCurve, "id" | "cropId" | "varietyId" | "plantingId">;

/** A built-in recipe. */
export type CatalogueRecipe = Omit<Recipe, "id">;

/** A published source that an origin names by its id. */
export type Source = { readonly title: string; readonly publisher: string; readonly address: string };
