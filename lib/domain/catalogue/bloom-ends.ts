import type { CatalogueCrop, CatalogueCurve } from "#lib/domain/catalogue-types";

/** The usual high of a day that ends the bloom, degrees Celsius, and what is known of it. */
type HeatEnd = { readonly endHighC: number; readonly note: string };

const heatEnd = (endHighC: number, note: string): HeatEnd => ({ endHighC, note });

/** 80 °F: flowering stops about there (USU-RANU, USU-ANEM); that it is the usual high of a day is our reading. */
const AT_80_F = 26.7;

const ENDED_BY_HEAT: Readonly<Record<string, HeatEnd>> = {
  Anemone: heatEnd(AT_80_F, "Heat ends it where the usual high of a day comes to 80 °F, our reading (USU-ANEM)."),
  Ranunculus: heatEnd(AT_80_F, "Heat ends it where the usual high of a day comes to 80 °F, our reading (USU-RANU)."),
  Stock: heatEnd(AT_80_F, "Heat ends it where the usual high of a day comes to 80 °F, from memory."),
  "Sweet pea": heatEnd(28, "Heat ends it where the usual high of a day comes to 82 °F, from memory."),
};

/** They bloom on until the frost (USU-DAHLIA); that they give as much then as in their last week is from memory. */
const ENDED_BY_FROST = ["Ball dahlia", "Dahlia"];

/** The crop with what ends the bloom of its curves; most end with their weeks. */
export const withEnds = (crop: CatalogueCrop): CatalogueCrop => ({
  ...crop,
  curves: crop.curves.map((curve) => withEnd(crop.name, curve)),
});

function withEnd(cropName: string, curve: CatalogueCurve): CatalogueCurve {
  if (ENDED_BY_FROST.includes(cropName)) return { ...curve, ends: "frost" };
  const heat = ENDED_BY_HEAT[cropName];
  if (!heat) return curve;
  return { ...curve, ends: "heat", endHighC: heat.endHighC, note: `${curve.note} ${heat.note}` };
}
