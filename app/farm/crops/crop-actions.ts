"use server";

import { addCrop, addVariety, removeCrop, removeVariety, updateCrop, updateVariety } from "#db/write/crops";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { VARIETY } from "#lib/domain/records/variety";
import { action, idIn, readEntry, refusal } from "../../action";
import { readCrop } from "./crop-values";

/** Adds a crop and opens it, or changes one. */
export const saveCrop = action(
  (values, { farm, crops }) => readEntry(values, "cropId", crops, (before) => readCrop(values, farm, before)),
  (database, { id, draft }) => (id === null ? addCrop(database, draft) : updateCrop(database, id, draft)),
  (cropId, { id }) => (id === null ? `/farm/crops/${cropId}` : null),
);

/** Gives a crop of the catalogue its built-in numbers back, each with its mark. Its curves, varieties and words stay. */
export const restoreCrop = action(idIn("cropId"), (database, cropId, { crops }) => {
  const crop = crops.find(({ id }) => id === cropId);
  const builtIn = CATALOGUE.find(({ name }) => name === crop?.name);
  if (!crop || !builtIn) return refusal("cropId", "this crop is not a built-in one");
  const { id, ...draft } = crop;
  const numbers = Object.keys(CROP_NUMBERS).map((name) => [name, builtIn[name as keyof typeof CROP_NUMBERS]]);
  const { buyInColours, buyInMonths, tradeOrigin, headSize, stemLength, outOfWater, traitsOrigin } = builtIn;
  const rest = { buyInColours, buyInMonths, tradeOrigin, headSize, stemLength, outOfWater, traitsOrigin };
  return updateCrop(database, id, { ...draft, ...Object.fromEntries(numbers), ...rest });
});

/** Takes a crop off the farm, if nothing names it. */
export const deleteCrop = action(idIn("cropId"), removeCrop, () => "/farm/crops");

/** Adds a variety to a crop, or changes one. */
export const saveVariety = action(
  (values, { farm, varieties }) => readEntry(values, "varietyId", varieties, () => values.record(VARIETY, farm)),
  (database, { id, draft }) => (id === null ? addVariety(database, draft) : updateVariety(database, id, draft)),
);

/** Takes a variety off the farm, if no planting and no stems in the cooler are of it. */
export const deleteVariety = action(idIn("varietyId"), removeVariety);
