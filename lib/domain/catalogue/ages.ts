import type { CatalogueCrop } from "#lib/domain/catalogue-types";

/** Stems in each season of a plant's life, as shares of a grown plant's, and what is known of them. */
type Ages = { readonly shareByAge: number[]; readonly note: string };

const ages = (note: string, ...shareByAge: number[]): Ages => ({ shareByAge, note });

const GROWING = "Young plants give a part of a grown one, season by season: from memory.";

/** What lives on from year to year, of any treatment but one. A plant whose age nobody has told is taken as grown. */
const AGES: Readonly<Record<string, Ages>> = {
  Delphinium: ages(
    "37 stems per square metre in its first year and 70 in the second are published (USU-DELTH).",
    0.53,
    1,
  ),
  "Garden rose": ages(GROWING, 0.08, 0.43, 1),
  Hydrangea: ages(GROWING, 0.08, 0.28, 1),
  Lily: ages("Bulbs that stay give as much each year: from memory.", 1),
  Mint: ages(GROWING, 0.5, 1),
  Narcissus: ages("Bulbs that stay give as much each year: from memory.", 1),
  Ninebark: ages(GROWING, 0, 0.3, 1),
  Peony: ages("None are cut in the first season and few before the fourth: shares from memory.", 0, 0.1, 0.3, 0.5, 1),
  "Raspberry leaf": ages(GROWING, 0.3, 1),
  Yarrow: ages(GROWING, 0.5, 1),
};

/** Kept dahlias crowd: their first season in the ground is the one they were planted in. From memory. */
const CROWDING = ages("Clumps that are never lifted crowd after two or three winters: from memory.", 1, 1, 1, 0.8, 0.6);

/** The crop with the stems of each season of its life, where it lives on. */
export function withAges(crop: CatalogueCrop): CatalogueCrop {
  return {
    ...crop,
    curves: crop.curves.map((curve) => {
      const found = curve.treatment === "kept-in-ground" ? CROWDING : AGES[crop.name];
      return found ? { ...curve, shareByAge: found.shareByAge, note: `${curve.note} ${found.note}`.trim() } : curve;
    }),
  };
}
