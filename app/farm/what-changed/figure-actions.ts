"use server";

import { putFigures } from "#db/write/figures";
import {
  type ChangedCrop,
  changedFigures,
  type FigureRows,
  keptFigures,
  takenFigures,
} from "#lib/domain/built-in-figures";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import type { Parsed } from "#lib/domain/problem";
import type { Snapshot } from "#lib/domain/snapshot";
import { countOf } from "#lib/plan/words/numbers";
import { action } from "../../action";
import type { FormValues } from "../../ui/form-values";

type Settled = { readonly title: string; readonly rows: FigureRows };

/** Takes the built-in figures of one crop, or of all. */
export const takeFigures = action(
  (values, farm) => settled(values, farm, "took", takenFigures),
  (database, { title, rows }) => putFigures(database, title, rows),
);

/** Keeps the farm's figures of one crop, or of all, as the grower's own. */
export const keepFigures = action(
  (values, farm) => settled(values, farm, "kept", keptFigures),
  (database, { title, rows }) => putFigures(database, title, rows),
);

function settled(
  values: FormValues,
  farm: Snapshot,
  did: "took" | "kept",
  rowsOf: (changed: readonly ChangedCrop[]) => FigureRows,
): Parsed<Settled> {
  const isAll = values.text("crop") === "all";
  const changed = changedFigures(farm, CATALOGUE).filter(
    ({ crop }) => isAll || crop.id === values.hiddenNumber("crop"),
  );
  const whose = isAll || changed.length !== 1 ? countOf(changed.length, "crop") : changed[0].crop.name;
  const title = did === "took" ? `took the built-in figures of ${whose}` : `kept the farm's own figures of ${whose}`;
  return { ok: true, parsed: { title, rows: rowsOf(changed) } };
}
