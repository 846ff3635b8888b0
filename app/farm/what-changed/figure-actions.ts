"use server";

import { putFigures } from "#db/write/figures";
import { type FigureRows, keptFigures, takenFigures } from "#lib/domain/built-in-figures";
import type { Parsed } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { action } from "../../action";
import type { FormValues } from "../../ui/form-values";
import { changedInWords, changedOf } from "./changed-of";

type Settled = { readonly title: string; readonly rows: FigureRows };

/** Takes the built-in figures of one crop, the built-in recipes, or all of them. */
export const takeFigures = action(
  (values, farm) => settled(values, farm, "took", takenFigures),
  (database, { title, rows }) => putFigures(database, title, rows),
);

/** Keeps the farm's figures of one crop, its recipes, or all of them, as the grower's own. */
export const keepFigures = action(
  (values, farm) => settled(values, farm, "kept", keptFigures),
  (database, { title, rows }) => putFigures(database, title, rows),
);

function settled(
  values: FormValues,
  farm: Snapshot,
  did: "took" | "kept",
  rowsOf: typeof takenFigures,
): Parsed<Settled> {
  const asked = values.text("of");
  const isAll = asked === "all";
  const { crops, recipes } = changedOf(farm);
  const ofAsked = {
    crops: crops.filter(({ crop }) => isAll || asked === String(crop.id)),
    recipes: isAll || asked === "recipes" ? recipes : [],
  };
  const [only] = ofAsked.crops;
  const whose = only && !isAll ? only.crop.name : changedInWords(ofAsked);
  const title = did === "took" ? `took the built-in figures of ${whose}` : `kept the farm's own figures of ${whose}`;
  return { ok: true, parsed: { title, rows: rowsOf(ofAsked.crops, ofAsked.recipes) } };
}
