"use server";

import { putCurve, removeCurve } from "#db/write/crops";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { farmDatabase, loadFarm } from "../../load";
import type { FormState } from "../../ui/form-state";
import { taken } from "../../ui/form-taken";
import { FormValues } from "../../ui/form-values";
import { readCurve } from "./curve-values";

/** Writes a bloom curve for all of a crop, or for one variety alone. */
export async function saveCurve(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const curveId = values.hiddenNumber("curveId");
  const curve = readCurve(
    values,
    loadFarm().curves.find(({ id }) => id === curveId),
  );
  return curve.ok ? taken(values, putCurve(farmDatabase(), curve.parsed)) : values.refused();
}

/** Takes the farm's own curve back: a variety's is removed, so that its crop's counts again; a crop's becomes the built-in one. */
export async function restoreCurve(_: FormState, form: FormData): Promise<FormState> {
  const values = new FormValues(form);
  const { curves, crops } = loadFarm();
  const curve = curves.find(({ id }) => id === values.hiddenNumber("curveId"));
  if (!curve) return values.refused([{ place: "curveId", message: "this bloom curve is no longer on the farm" }]);
  if (curve.varietyId !== null) return taken(values, removeCurve(farmDatabase(), curve.id));
  const cropName = crops.find(({ id }) => id === curve.cropId)?.name;
  const builtIn = CATALOGUE.find(({ name }) => name === cropName)?.curves.find(
    ({ treatment }) => treatment === curve.treatment,
  );
  if (!builtIn) return values.refused([{ place: "curveId", message: "there is no built-in curve for this" }]);
  return taken(values, putCurve(farmDatabase(), { ...builtIn, cropId: curve.cropId, varietyId: null }));
}
