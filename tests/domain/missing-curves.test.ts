import { expect, test } from "vitest";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { addedCurve, missingCurves } from "#lib/domain/missing-curves";
import { provenPlan } from "../proven-plan";
import { crop, curve, planting, snapshot } from "../small-farm";
import { catalogueCrop, catalogueCurve } from "../truth/catalogue-curve";

const { curves: _, ...facts } = catalogueCrop("Stock");
const stock = crop({ id: 1, ...facts });
const field = curve(catalogueCurve("Stock", "field"));

test("[W9] a farm that grows stock in the field alone is offered stock under a tunnel, and nothing once it has it", () => {
  const farm = { crops: [stock], curves: [field] };
  const missing = missingCurves(farm, CATALOGUE);
  expect(missing.map(({ crop, curve }) => [crop.name, curve.treatment])).toEqual([["Stock", "tunnel"]]);
  const curves = [field, { id: 2, ...addedCurve(missing[0]) }];
  expect(missingCurves({ ...farm, curves }, CATALOGUE)).toEqual([]);
});

test("[W9] a curve of one variety is none of the crop, and a crop of the grower's own is offered nothing", () => {
  const ofVariety = curve({ ...catalogueCurve("Stock", "tunnel"), id: 2, varietyId: 1 });
  expect(missingCurves({ crops: [stock], curves: [field, ofVariety] }, CATALOGUE)).toHaveLength(1);
  expect(missingCurves({ crops: [{ ...stock, name: "Stock of mine" }], curves: [] }, CATALOGUE)).toEqual([]);
});

test("[W9] added, it moves no planting that has a curve, and one without then blooms", () => {
  const farm = snapshot({
    crops: [stock],
    curves: [field],
    plantings: [planting({ id: 1 }), planting({ id: 2, treatment: "tunnel" })],
  });
  const curves = [field, { id: 2, ...addedCurve(missingCurves(farm, CATALOGUE)[0]) }];
  const [before, after] = [farm, { ...farm, curves }].map((one) => provenPlan(one, 2027).forecast);
  expect(before.problems.map(({ planting: { id } }) => id)).toEqual([2]);
  expect(after.problems).toEqual([]);
  expect(after.plantings[0].cutStems).toEqual(before.plantings[0].cutStems);
  expect(after.plantings[1].openedStems).toBeGreaterThan(0);
});
