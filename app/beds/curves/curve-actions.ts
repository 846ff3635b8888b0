"use server";

import { putCurve, removeCurve } from "#db/write/crops";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { action, idIn, refusal } from "../../action";
import { readCurve } from "./curve-values";

/** Writes a bloom curve for all of a crop, or for one variety alone. */
export const saveCurve = action(
  (values, { farm, curves }) =>
    readCurve(
      values,
      farm,
      curves.find(({ id }) => id === values.hiddenNumber("curveId")),
    ),
  putCurve,
);

/** Takes the farm's own curve back: a planting's or a variety's is removed, so that its variety's or crop's counts again; a crop's becomes the built-in one. */
export const restoreCurve = action(idIn("curveId"), (database, curveId, { curves, crops }) => {
  const curve = curves.find(({ id }) => id === curveId);
  if (!curve) return refusal("curveId", "this bloom curve is no longer on the farm");
  if (curve.varietyId !== null) return removeCurve(database, curve.id);
  const cropName = crops.find(({ id }) => id === curve.cropId)?.name;
  const builtIn = CATALOGUE.find(({ name }) => name === cropName)?.curves.find(
    ({ treatment }) => treatment === curve.treatment,
  );
  return builtIn
    ? putCurve(database, { ...builtIn, cropId: curve.cropId, varietyId: null, plantingId: null })
    : refusal("curveId", "there is no built-in curve for this");
});
