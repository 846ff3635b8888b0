import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { addCurves } from "#db/write/crops";
import { putFigures } from "#db/write/figures";
import { addedCurve } from "#lib/domain/missing-curves";
import type { RecipeLine } from "#lib/domain/records/recipe";
import { OWN } from "#lib/domain/sourced";
import { catalogueCurve } from "../truth/catalogue-curve";
import { changeOf, kept, refused, withFarm } from "./kept-farm";

const ADDED_LINE: RecipeLine = { role: "filler", stemsPerPiece: 1.5, asks: [], colours: "palette-or-neutral" };

test("figures of a crop, a curve and a recipe are replaced as one change, and one undo brings all back", () => {
  withFarm((database) => {
    const before = kept(database);
    const rows = {
      crops: [{ ...before.crops[0], holdDays: { count: 9, ...OWN } }],
      curves: [{ ...before.curves[1], stemsPerPlantByWeek: [1, 2, 3] }],
      recipes: [{ ...before.recipes[0], lines: [...before.recipes[0].lines, ADDED_LINE] }],
    };
    const changeId = changeOf(putFigures(database, "took the built-in figures of Crop 1", rows));
    const after = kept(database);
    expect(after.crops).toEqual([rows.crops[0], before.crops[1]]);
    expect(after.curves).toEqual([before.curves[0], rows.curves[0]]);
    expect(after.recipes).toEqual([rows.recipes[0], ...before.recipes.slice(1)]);
    expect(undoChange(database, changeId).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});

test("with no row, or a row that is gone, nothing is written and the reason is told", () => {
  withFarm((database) => {
    const before = kept(database);
    expect(refused(putFigures(database, "took", { crops: [], curves: [], recipes: [] }))[0]).toContain(
      "settled already",
    );
    const gone = { crops: [{ ...before.crops[0], id: 99 }], curves: [{ ...before.curves[0], id: 98 }], recipes: [] };
    expect(refused(putFigures(database, "took", gone))).toHaveLength(2);
    expect(kept(database)).toEqual(before);
  });
});

test("built-in curves that the farm lacks are added as one change, and one undo takes them out", () => {
  withFarm((database) => {
    const before = kept(database);
    const [crop] = before.crops;
    const tunnel = { crop, curve: catalogueCurve("Snapdragon", "tunnel") };
    const changeId = changeOf(addCurves(database, [tunnel].map(addedCurve)));
    const after = kept(database);
    expect(after.curves.slice(0, -1)).toEqual(before.curves);
    expect(after.curves.at(-1)).toMatchObject({ cropId: crop.id, varietyId: null, ...tunnel.curve });
    expect(undoChange(database, changeId).ok).toBe(true);
    expect(kept(database)).toEqual(before);
  });
});
